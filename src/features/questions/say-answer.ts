/** What comes back to a form in which somebody said something. */
export type SayAnswer =
  | { readonly status: "kept" }
  | {
      readonly status: "refused";
      /** Sentences by field. */
      readonly errors: Readonly<Record<string, string>>;
      /** Of the form as a whole. */
      readonly says: string | null;
      readonly typed: Readonly<Record<string, string>>;
    };
