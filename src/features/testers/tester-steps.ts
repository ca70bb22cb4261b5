import { reportSteps, type StepId, type StepState } from "@/engine/reporting";
import type { ReportInHand } from "@/features/reports/data";

/** The pages that a tester goes through, in their order, and the step of her report that each fills. */
export const STEP_PAGES = {
  swatch: { label: "Swatch", step: "swatch" },
  pattern: { label: "The pattern", step: null },
  counts: { label: "Counts as worked", step: "make" },
  measurements: { label: "Measurements", step: "measure" },
  yarn: { label: "Yarn", step: "yarn" },
  fit: { label: "Fit", step: "fit" },
  report: { label: "Look through and send", step: null },
} as const satisfies Record<string, { label: string; step: StepId | null }>;

export type StepPage = keyof typeof STEP_PAGES;

export interface TesterStep {
  readonly page: StepPage;
  readonly label: string;
  /** Null where a page has nothing to fill. */
  readonly state: StepState | null;
  /** How far she is, in words; "" where there is nothing to say. */
  readonly says: string;
}

/** How far a tester is with each of her pages; a page with nothing in it for her pattern is left out. */
export function testerSteps(inHand: ReportInHand): TesterStep[] {
  const told = new Map(reportSteps(inHand.typed, inHand.context).map((told) => [told.step, told]));
  return stepPages().flatMap((page): TesterStep[] => {
    const { label, step } = STEP_PAGES[page];
    if (page === "report") return [{ page, label, ...sentState(inHand) }];
    if (step === null) return [{ page, label, state: null, says: "" }];
    const found = told.get(step);
    return found === undefined ? [] : [{ page, label, state: found.state, says: found.message }];
  });
}

function stepPages(): StepPage[] {
  return ["swatch", "pattern", "counts", "measurements", "yarn", "fit", "report"];
}

function sentState({ sent, changed }: ReportInHand): { state: StepState; says: string } {
  if (sent === null) return { state: "empty", says: "nothing sent yet" };
  if (changed.length === 0) return { state: "complete", says: "sent" };
  return { state: "begun", says: "changed since it was sent" };
}
