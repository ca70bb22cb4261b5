import type { SaidByField, TypedApplication } from "../../apply-form";

/** What the form was last answered with, or what it begins with. */
export interface Answered {
  readonly typed: TypedApplication;
  readonly faults: SaidByField;
  readonly doubts: SaidByField;
}

/** The id of a field's control on the page. */
export function controlId(field: string): string {
  return `apply-${field.replace(".", "-")}`;
}
