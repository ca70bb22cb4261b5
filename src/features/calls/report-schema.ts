import { z } from "zod";
import { testerSchema, type Decision, type ReadingDecision, type Tester } from "@/engine/pattern";

/** A report as stored: a document's tester without what has rows of its own. */
export const storedReportSchema = testerSchema.omit({ id: true, body: true });

export type StoredReport = z.infer<typeof storedReportSchema>;

export type ReportPart = "swatches" | "readings" | "yarn";

/** The position of an item in its report, and a person's decision on it. */
export interface ReportDecision {
  readonly part: ReportPart;
  readonly position: number;
  /** Only of a reading another value. */
  readonly decision: ReadingDecision;
}

/** Decisions as stored: names of database enums cannot contain hyphens. */
const STORED_DECISION = { keep: "keep", "set-aside": "exclude" } as const satisfies Record<Decision, string>;

/** The columns of a decision's row. */
interface StoredDecision {
  readonly decision: "keep" | "exclude";
  /** The value that is used in the typed one's place; such a reading is kept. */
  readonly usedCm: number | null;
}

/** A decision of a document as its row holds it. */
export function storedDecision(decision: ReadingDecision): StoredDecision {
  return typeof decision === "object"
    ? { decision: "keep", usedCm: decision.use }
    : { decision: STORED_DECISION[decision], usedCm: null };
}

/** The other way. */
export function readDecision({ decision, usedCm }: StoredDecision): ReadingDecision {
  if (usedCm !== null) return { use: usedCm };
  return decision === "exclude" ? "set-aside" : "keep";
}

const PARTS: readonly ReportPart[] = ["swatches", "readings", "yarn"];

/** Splits a tester's document into the report and the decisions of people on its items. */
export function takeApart(tester: Tester): { report: StoredReport; decisions: ReportDecision[] } {
  const decisions = PARTS.flatMap((part) =>
    tester[part].flatMap(({ decision }, position) => (decision === undefined ? [] : [{ part, position, decision }])),
  );
  const { id: _id, body: _body, ...report } = tester;
  const undecided = <Item extends { readonly decision?: ReadingDecision }>(items: readonly Item[]) =>
    items.map(({ decision: _decision, ...item }) => item);
  return {
    report: storedReportSchema.parse({
      ...report,
      swatches: undecided(report.swatches),
      readings: undecided(report.readings),
      yarn: undecided(report.yarn),
    }),
    decisions,
  };
}

/** The other way: the tester with the decisions at the items of their report. */
export function testerDocument(report: Tester, decisions: readonly ReportDecision[]): Tester {
  const decided = <Item>(part: ReportPart, items: readonly Item[]) =>
    items.map((item, index) => {
      const found = decisions.find((decision) => decision.part === part && decision.position === index);
      return found ? { ...item, decision: found.decision } : item;
    });
  return {
    ...report,
    swatches: decided("swatches", report.swatches),
    readings: decided("readings", report.readings),
    yarn: decided("yarn", report.yarn),
  };
}
