const NAMES: Readonly<Record<string, string>> = {
  "application-received": "Application received",
  "application-link": "Link to their application",
  "link-sent": "Their link",
  "place-offered": "Spot offered",
  "place-accepted": "Spot accepted",
  "place-released": "Spot opened or test ended",
  "question-answered": "Question answered",
  "number-asked": "Question about a number",
  "correction-published": "Correction",
  "pattern-released": "Pattern released",
  "report-received": "Report received",
  "designer-wrote": "What you wrote",
  reminder: "Reminder",
};

/** What a message was about. */
export function mailName(kind: string): string {
  return NAMES[kind] ?? "Message";
}
