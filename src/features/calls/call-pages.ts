/**
 * The pages of a call. A page's tab, its heading, the browser's title and links to it all use its name from here.
 */
export const CALL_PAGES = {
  overview: { path: "", name: "Overview" },
  setUp: { path: "/set-up", name: "Set up" },
  messages: { path: "/messages", name: "Messages" },
  applications: { path: "/applications", name: "Applications" },
  sizes: { path: "/sizes", name: "Sizes and testers" },
  progress: { path: "/progress", name: "Progress" },
  questions: { path: "/questions", name: "Questions" },
  thanks: { path: "/thanks", name: "Thanks" },
  differences: { path: "/differences", name: "Differences" },
  changes: { path: "/changes", name: "Causes and changes" },
  swatches: { path: "/swatches", name: "Swatches" },
  habits: { path: "/habits", name: "Measuring habits" },
  mistakes: { path: "/mistakes", name: "Possible mistakes" },
  yarn: { path: "/yarn", name: "Yarn" },
  fit: { path: "/fit", name: "Fit" },
  photos: { path: "/photos", name: "Photos" },
  method: { path: "/method", name: "How it works" },
  pattern: { path: "/pattern", name: "Pattern" },
} as const satisfies Record<string, { readonly path: string; readonly name: string }>;

export type CallPageKey = keyof typeof CALL_PAGES;

/** The four parts of a call, each with its pages; a part leads to its first. */
export const CALL_PARTS: readonly { readonly name: string; readonly pages: readonly CallPageKey[] }[] = [
  { name: "Set up", pages: ["setUp", "messages"] },
  { name: "Testers", pages: ["applications", "sizes", "progress", "questions", "thanks"] },
  {
    name: "Results",
    pages: ["differences", "changes", "swatches", "habits", "mistakes", "yarn", "fit", "photos", "method"],
  },
  { name: "Pattern", pages: ["pattern"] },
];

/** Where no mail is sent there is nothing to set up for it. */
export function pagesOf(part: { readonly pages: readonly CallPageKey[] }, isMailOn: boolean): readonly CallPageKey[] {
  return part.pages.filter((page) => isMailOn || page !== "messages");
}

/** The address of a call's page. */
export function callPageHref(callId: string, page: CallPageKey): string {
  return `/calls/${callId}${CALL_PAGES[page].path}`;
}

/** The address of the page of one of a call's testers. */
export function testerPageHref(callId: string, testerId: string): string {
  return `${callPageHref(callId, "progress")}/${testerId}`;
}

/** Something for the designer to do, and the page of the call for it. */
export interface NextStep {
  readonly page: CallPageKey;
  /** What the page is asked for, such as `?needs=late`. */
  readonly search?: string;
  readonly message: string;
  /** The same where it names people, for what is stored beyond their deletion. */
  readonly withoutNames?: string;
  readonly link: string;
}

/** Where it is done. */
export function nextStepHref(callId: string, { page, search = "" }: NextStep): string {
  return `${callPageHref(callId, page)}${search}`;
}
