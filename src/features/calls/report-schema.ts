import { z } from "zod";
import { testerSchema, type Decision, type Tester } from "@/engine/pattern";

/** A report as stored: a document's tester without what has rows of its own. */
export const storedReportSchema = testerSchema.omit({ id: true, body: true });

export type StoredReport = z.infer<typeof storedReportSchema>;

export type ReportPart = "swatches" | "readings" | "yarn";

/** The position of an item in its report, and a person's decision on it. */
export interface ReportDecision {
  readonly part: ReportPart;
  readonly position: number;
  readonly decision: Decision;
}

/** Decisions as stored: names of database enums cannot contain hyphens. */
export const STORED_DECISION = { keep: "keep", "set-aside": "exclude" } as const satisfies Record<Decision, string>;

/** A stored decision as documents have it. */
export const READ_DECISION = { keep: "keep", exclude: "set-aside" } as const satisfies Record<string, Decision>;

const PARTS: readonly ReportPart[] = ["swatches", "readings", "yarn"];

/** Splits a tester's document into the report and the decisions of people on its items. */
export function takeApart(tester: Tester): { report: StoredReport; decisions: ReportDecision[] } {
  const decisions = PARTS.flatMap((part) =>
    tester[part].flatMap(({ decision }, position) => (decision === undefined ? [] : [{ part, position, decision }])),
  );
  const { id: _id, body: _body, ...report } = tester;
  const undecided = <Item extends { readonly decision?: Decision }>(items: readonly Item[]) =>
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
