import { reportSteps, type StepId, type StepState } from "@/engine/reporting";
import type { NextPage } from "@/features/testing/report/autosave/step-bar";
import { isSentUnchanged } from "@/features/testing/report/changed-fields";
import type { ReportInHand } from "@/features/testing/report/data";

/** A tester's pages in their order, and the step of the report that each fills. */
const STEP_PAGES = {
  swatch: { label: "Swatch", step: "swatch" },
  pattern: { label: "The pattern", step: null },
  counts: { label: "Your counts", step: "make" },
  measurements: { label: "Measurements", step: "measure" },
  yarn: { label: "Yarn", step: "yarn" },
  fit: { label: "Fit", step: "fit" },
  photos: { label: "Photos", step: null },
  report: { label: "Review and send", step: null },
} as const satisfies Record<string, { label: string; step: StepId | null }>;

export type StepPage = keyof typeof STEP_PAGES;

export interface TesterStep {
  readonly page: StepPage;
  readonly label: string;
  /** Null if the page has nothing to fill. */
  readonly state: StepState | null;
  /** Progress in words; "" if there is nothing to say. */
  readonly message: string;
}

export function isStepPage(name: string): name is StepPage {
  return Object.hasOwn(STEP_PAGES, name);
}

/** The page after one, past what is optional; null after the last. */
export function nextPage(
  { tester, steps }: { readonly tester: { readonly testerId: string }; readonly steps: readonly TesterStep[] },
  current: StepPage,
): NextPage | null {
  const index = steps.findIndex(({ page }) => page === current);
  const next = steps.slice(index + 1).find(({ page }) => page !== "photos");
  return next === undefined
    ? null
    : { page: next.page, label: next.label, href: `/testing/${tester.testerId}/${next.page}` };
}

/** A tester's progress on each page; pages that the pattern does not need are left out. */
export function testerSteps(inHand: ReportInHand): TesterStep[] {
  const steps = new Map(reportSteps(inHand.typed, inHand.context).map((each) => [each.step, each]));
  return stepPages().flatMap((page): TesterStep[] => {
    const { label, step } = STEP_PAGES[page];
    if (page === "report") return [{ page, label, ...sentState(inHand) }];
    if (page === "photos") return [{ page, label, state: null, message: "optional" }];
    if (step === null) return [{ page, label, state: null, message: "" }];
    const found = steps.get(step);
    return found === undefined ? [] : [{ page, label, state: found.state, message: found.message }];
  });
}

function stepPages(): StepPage[] {
  return ["swatch", "pattern", "counts", "measurements", "yarn", "fit", "photos", "report"];
}

function sentState(inHand: ReportInHand): { state: StepState; message: string } {
  if (inHand.sent === null) return { state: "empty", message: "nothing sent yet" };
  if (isSentUnchanged(inHand)) return { state: "complete", message: "sent" };
  return { state: "begun", message: "changed since you sent it" };
}
