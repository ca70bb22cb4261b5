import { bodyField, type AskedMeasurement } from "./apply-answer";

const LABELS: Readonly<Record<string, string>> = {
  name: "Name",
  email: "E-mail",
  unit: "Unit",
  "prefers.0": "First choice of size",
  "prefers.1": "Second choice of size",
  "prefers.2": "Third choice of size",
  accepts: "Sizes",
  forAnother: "Somebody else’s measurements",
  wearer: "Who wears it",
  yarn: "Yarn",
  tool: "Needle or hook",
  terms: "Stitch names",
  experience: "Testing experience",
  handle: "Social media",
  pastWork: "What you have made",
  agrees: "The agreement",
  adult: "Your age",
};

/** The name of a field in messages elsewhere on the page. */
export function fieldLabel(field: string, body: readonly AskedMeasurement[]): string {
  return body.find(({ id }) => bodyField(id) === field)?.label ?? LABELS[field] ?? field.replace("body.", "");
}

const ORDER = ["name", "email", "unit", "body", "accepts", "prefers.0", "prefers.1", "prefers.2"];

/** The position of a field in the form. */
export function fieldPlace(field: string): number {
  const position = ORDER.indexOf(field.startsWith("body.") ? "body" : field);
  return position < 0 ? ORDER.length + Object.keys(LABELS).indexOf(field) : position;
}
