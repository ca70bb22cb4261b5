/** Where the marker was before somebody was forgotten, and where it is afterwards. */
export interface Searched {
  readonly place: string;
  readonly before: number;
  readonly after: number;
}

/** Tables that the play must have marked, or it proves nothing. */
const MARKED_TABLES = [
  ...["account", "application", "application_body", "application_contact", "email_link", "message", "milestone"],
  ...["number_question", "photo", "question", "report", "report_draft", "reward", "tester", "tester_contact"],
  "trouble_spot",
];

/** What is wrong with what was found; nothing, where all is forgotten. */
export function faultsOf(searched: readonly Searched[]): string[] {
  const unmarked = MARKED_TABLES.filter(
    (table) => !searched.some(({ place, before }) => place === table && before > 0),
  );
  const left = searched.filter(({ after }) => after > 0);
  return [
    ...unmarked.map((table) => `${table}: was never marked, so nothing is shown about it`),
    ...left.map(({ place, after }) => `${place}: ${after} still hold the marker`),
  ];
}
