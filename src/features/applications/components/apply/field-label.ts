import { bodyField, type AskedOfApplicants } from "../../apply-form";

const LABELS: Readonly<Record<string, string>> = {
  name: "Name",
  email: "E-mail",
  unit: "Centimetres or inches",
  "prefers.0": "First choice of size",
  "prefers.1": "Second choice of size",
  "prefers.2": "Third choice of size",
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
export function fieldLabel(field: string, { body }: AskedOfApplicants): string {
  return body.find(({ id }) => bodyField(id) === field)?.label ?? LABELS[field] ?? field;
}
