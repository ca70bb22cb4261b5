/** The result of sending a report. */
export type SendAnswer =
  { readonly status: "sent"; readonly version: number } | { readonly status: "failed"; readonly message: string };
