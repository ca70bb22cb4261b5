import type { Cell } from "@/engine/gaps";
import { cmOfSize, ownValue, type Measurement, type PatternDocument, type Size } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import type { AcceptedProposal } from "@/engine/revision";
import type { PlanOutput } from "./plan-schema";
import { againstTarget, type AgainstTarget } from "../target-copy";

export type RevisedPlan = Extract<PlanOutput, { status: "revised" }>;

/** The expected length of a measurement in one size at the pattern's gauge, before and after the revision, cm. */
export interface PlannedCell {
  readonly size: Size;
  readonly toleranceCm: number;
  readonly targetCm: number | null;
  readonly before: { readonly expectedCm: number | null; readonly against: AgainstTarget; readonly cell: Cell };
  readonly after: {
    readonly expectedCm: number;
    readonly lowCm: number | null;
    readonly highCm: number | null;
    readonly against: AgainstTarget;
    /** The same reports compared with the revised pattern. */
    readonly cell: Cell;
  };
}

export interface PlannedRow {
  readonly measurement: Measurement;
  readonly cells: readonly PlannedCell[];
}

/** A number by size that changes somewhere; both null in a size where it is not there. */
export interface ChangedRow {
  readonly key: string;
  readonly label: string;
  readonly kind: "count" | "allowance";
  readonly bySize: readonly { readonly was: number | null; readonly becomes: number }[];
}

interface InstructionFix {
  readonly label: string;
  readonly size: string;
  readonly was: number;
  readonly becomes: number;
}

export interface PlanOutcome {
  readonly instructions: readonly InstructionFix[];
  readonly changedRows: readonly ChangedRow[];
  readonly rows: readonly PlannedRow[];
}

interface Given {
  readonly before: PatternDocument;
  /** The results when it was requested. */
  readonly cellsBefore: readonly Cell[];
  readonly take: readonly AcceptedProposal[];
  readonly plan: RevisedPlan;
}

/** What saving a plan does to the pattern and every measurement. */
export function planOutcome(given: Given): PlanOutcome {
  return { instructions: instructionFixes(given), changedRows: changedRows(given), rows: plannedRows(given) };
}

function instructionFixes({ before, take, plan }: Given): InstructionFix[] {
  const told = plan.changes.filter(({ path }) => path === "instructions");
  return take
    .filter(({ kind, by }) => kind === "count" && by === "input")
    .flatMap(({ id, size }, index) => {
      const change = told[index];
      if (change?.was == null) return [];
      const label = before.counts.find((count) => count.id === id)?.label ?? id;
      return [{ label, size: sizeLabel(before, size), was: change.was, becomes: change.becomes }];
    });
}

function sizeLabel({ sizes }: PatternDocument, id: string | undefined): string {
  return sizes.find((size) => size.id === id)?.label ?? "";
}

function changedRows({ before, plan: { pattern } }: Given): ChangedRow[] {
  const counts = pattern.counts.map(({ id, label }): ChangedRow => ({
    key: `grading.${id}`,
    label,
    kind: "count",
    bySize: pattern.sizes.map((size) => ({
      was: ownValue(ownValue(before.grading, id), size.id) ?? null,
      becomes: ownValue(ownValue(pattern.grading, id), size.id) ?? 0,
    })),
  }));
  const allowances = pattern.allowances
    .filter(({ cm }) => typeof cm !== "number")
    .map(({ id, label, cm }): ChangedRow => {
      const old = before.allowances.find((allowance) => allowance.id === id)?.cm;
      return {
        key: `allowances.${id}`,
        label,
        kind: "allowance",
        bySize: pattern.sizes.map((size) => ({
          was: old === undefined ? null : cmOfSize(old, size.id),
          becomes: cmOfSize(cm, size.id),
        })),
      };
    });
  return [...allowances, ...counts].filter(({ bySize }) => bySize.some(({ was, becomes }) => was !== becomes));
}

function plannedRows({ before, cellsBefore, plan }: Given): PlannedRow[] {
  const { pattern, after, replayed } = plan;
  const promised = pattern.sizes.map(({ id }) => ({
    before: predict({ pattern: before, size: id }).measurements,
    after: predict({ pattern, size: id }).measurements,
  }));
  const count = pattern.measurements.length;
  return pattern.measurements.map((measurement, index) => ({
    measurement,
    cells: pattern.sizes.map((size, s): PlannedCell => {
      const [cell, cellAfter] = [present(cellsBefore[s * count + index]), present(replayed.cells[s * count + index])];
      const was = present(promised[s]?.before[index]);
      const targetCm = present(promised[s]?.after[index]).targetCm;
      const { toleranceCm } = measurement;
      const { expectedCm } = present(after[s * count + index]);
      const expectedBefore = cell.gapCm === null ? null : was.designCm + cell.gapCm;
      const around = (bound: number | null) =>
        bound === null || cellAfter.gapCm === null ? null : expectedCm + bound - cellAfter.gapCm;
      return {
        size,
        toleranceCm,
        targetCm,
        before: {
          expectedCm: expectedBefore,
          against: againstTarget({ expectedCm: expectedBefore, targetCm: was.targetCm, toleranceCm }),
          cell,
        },
        after: {
          expectedCm,
          lowCm: around(cellAfter.lowCm),
          highCm: around(cellAfter.highCm),
          against: againstTarget({ expectedCm, targetCm, toleranceCm }),
          cell: cellAfter,
        },
      };
    }),
  }));
}

function present<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new RangeError("the plan or the analysis is of another pattern");
  return value;
}
