/** The result of sending a form with free text. */
export type SayAnswer =
  | { readonly status: "sent" }
  | {
      readonly status: "refused";
      /** Messages by field. */
      readonly errors: Readonly<Record<string, string>>;
      /** A message about the whole form. */
      readonly message: string | null;
      readonly typed: Readonly<Record<string, string>>;
    };
