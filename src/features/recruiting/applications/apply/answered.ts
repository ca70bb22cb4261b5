import type { MessagesByField, TypedApplication } from "./apply-answer";

/** The last answer to the form, or its initial values. */
export interface Answered {
  readonly typed: TypedApplication;
  readonly faults: MessagesByField;
  readonly doubts: MessagesByField;
}

/** The id of a field's control on the page. */
export function controlId(field: string): string {
  return `apply-${field.replace(".", "-")}`;
}
