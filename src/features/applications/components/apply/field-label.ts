import { bodyField, type AskedMeasurement } from "../../apply-form";

const LABELS: Readonly<Record<string, string>> = {
  name: "Name",
  email: "E-mail",
  unit: "Centimetres or inches",
  "prefers.0": "First choice of size",
  "prefers.1": "Second choice of size",
  "prefers.2": "Third choice of size",
  accepts: "Sizes",
  forAnother: "Somebody else’s measurements",
  yarn: "Yarn",
  tool: "Tool",
  terms: "Stitch names",
  experience: "Experience",
  handle: "Handle",
  pastWork: "Past work",
  agrees: "The agreement",
  adult: "18 or over",
};

/** What a field is called where it is spoken of elsewhere on the page. */
export function fieldLabel(field: string, body: readonly AskedMeasurement[]): string {
  return body.find(({ id }) => bodyField(id) === field)?.label ?? LABELS[field] ?? field.replace("body.", "");
}

const ORDER = ["name", "email", "unit", "body", "accepts", "prefers.0", "prefers.1", "prefers.2"];

/** Where a field stands in the form, from its top. */
export function fieldPlace(field: string): number {
  const place = ORDER.indexOf(field.startsWith("body.") ? "body" : field);
  return place < 0 ? ORDER.length + Object.keys(LABELS).indexOf(field) : place;
}
