import { NOTICE_FIELDS } from "../field-names";

const LABELS: Readonly<Record<string, string>> = {
  title: "Title",
  leastOfAll: "Sizes and testers",
  wantedOfAll: "Sizes and testers",
  mostOfAll: "Sizes and testers",
  introduction: "Introduction",
  timeZone: "Time zone",
  applyUntil: "Last day to apply",
  startOn: "Testers start on",
  swatchBy: "Swatches by",
  reportBy: "Reports by",
  asks: "What testers do and send",
  yarn: "Yarn",
  tools: "Needle or hook",
  gives: "What testers get",
  mostApplications: "Maximum number of applications",
  releaseOn: "Pattern released on",
  agreement: "Agreement",
  progressPhotos: "Photos of work in progress",
  finishedPhotos: "Photos of the finished garment",
  [NOTICE_FIELDS.responsible]: "Who is responsible",
  [NOTICE_FIELDS.contact]: "How to reach them",
  [NOTICE_FIELDS.minimumAge]: "Minimum age of testers",
  [NOTICE_FIELDS.monthsStored]: "Months after the end",
  [NOTICE_FIELDS.more]: "What else the notice says",
};

const GROUPS: Readonly<Record<string, string>> = {
  least: "Sizes and testers",
  wanted: "Sizes and testers",
  most: "Sizes and testers",
  body: "Body measurements",
};

/** The name of a field in messages elsewhere on the page. */
export function fieldLabel(field: string): string {
  return LABELS[field] ?? GROUPS[field.split(".", 1)[0] ?? ""] ?? field;
}
