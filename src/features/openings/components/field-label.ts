const LABELS: Readonly<Record<string, string>> = {
  title: "Title",
  introduction: "Introduction",
  timeZone: "Time zone",
  applyUntil: "Last day to apply",
  startOn: "Testers start on",
  swatchBy: "Swatches by",
  reportBy: "Reports by",
  asks: "What testers do and send",
  yarn: "Yarn",
  tools: "Tools",
  gives: "What testers get",
  mostApplications: "Most applications",
  agreement: "Agreement",
};

const GROUPS: Readonly<Record<string, string>> = {
  least: "Tester spots",
  wanted: "Tester spots",
  body: "Body measurements",
};

/** What a field is called where it is spoken of elsewhere than beside it. */
export function fieldLabel(field: string): string {
  return LABELS[field] ?? GROUPS[field.split(".", 1)[0] ?? ""] ?? field;
}
