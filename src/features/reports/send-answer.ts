/** What becomes of a report that is sent. */
export type SendAnswer =
  { readonly status: "sent"; readonly version: number } | { readonly status: "failed"; readonly says: string };
