/** A field of a form that may have been sent and refused. */
export interface SentField {
  readonly initialValue?: unknown;
}

/** What a refused form sent under a name: one text where one was sent, else a list with gaps where they were blank. */
export function sentTexts({ initialValue }: SentField): string[] {
  return [initialValue].flat().map((text) => (typeof text === "string" ? text : ""));
}
