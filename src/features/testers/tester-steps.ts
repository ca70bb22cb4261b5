import type { TesterRead } from "./data";

/** The pages that a tester goes through, in their order. */
export const STEP_PAGES = {
  swatch: "Swatch",
  pattern: "The pattern",
  counts: "Counts as worked",
  measurements: "Measurements",
  yarn: "Yarn and hours",
  fit: "Fit",
  report: "Send the report",
} as const;

export type StepPage = keyof typeof STEP_PAGES;

export interface TesterStep {
  readonly page: StepPage;
  readonly label: string;
  /** Null where a page has nothing to fill. */
  readonly state: "empty" | "begun" | "complete" | "faulty" | null;
  /** How far she is, in words. */
  readonly says: string;
}

/** How far she is with each of her pages. */
export function testerSteps(_tester: TesterRead): TesterStep[] {
  return STEP_ORDER.map((page) => ({ page, label: STEP_PAGES[page], state: null, says: "" }));
}

const STEP_ORDER: readonly StepPage[] = ["swatch", "pattern", "counts", "measurements", "yarn", "fit", "report"];
