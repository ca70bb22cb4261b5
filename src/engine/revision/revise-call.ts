import { estimateTaken, settleCall, type TakenEstimate } from "../gaps";
import { countGroups, solveCounts, solvedCounts, type Clash } from "../grading";
import type { Solver } from "../integer-program";
import { own, type CallDocument, type Fault, type PatternDocument } from "../pattern";
import { indexPattern, measure, patternWorking } from "../prediction";
import { adjustInput } from "./adjust-input";
import { patternChanges, type Change } from "./pattern-changes";
import { replayedCall, type MisworkedCount } from "./replayed-call";
import type { ReviseRequest, Taken } from "./revise-request";

/** Even steps are worth more to a designer than the last millimetre: a quarter of a tolerance costs nothing (docs/method.md#grading). */
const USUAL_SLACK = 0.25;

export type Revision =
  | {
      readonly status: "revised";
      readonly pattern: PatternDocument;
      readonly changes: readonly Change[];
      readonly after: readonly AfterRevision[];
      /** The same reports against the revised pattern, by the counts really worked: what `gaps` says once it is taken. */
      readonly replayed: CallDocument;
    }
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

export interface AfterRevision {
  readonly size: string;
  readonly measurement: string;
  /** What it is then expected to come to at the pattern's gauge. */
  readonly expectedCm: number;
  /** That less what the revised pattern predicts. */
  readonly gapCm: number;
}

interface Amount {
  readonly taken: Taken;
  readonly estimate: TakenEstimate;
  /** In the input's own unit; a whole number of stitches or rows. */
  readonly amount: number;
}

/**
 * The pattern with the proposals that the designer takes, what changes, and what each measurement is then expected to be.
 *
 * Taken by `input` the input is corrected where it stands and the counts that it bears on are solved anew, near the tested
 * ones; by `published` the counts stay. A count's proposal mends the instructions or takes the number really worked.
 *
 * @param solver an exact integer solver.
 * @see docs/method.md#revision.
 */
export function reviseCall({ call, take, slack = USUAL_SLACK }: ReviseRequest, solver: Solver): Revision {
  const settled = settleCall(call).call;
  const found = estimateTaken(settled, take);
  const unknown = found.estimates.flatMap((estimate, at) =>
    estimate === null
      ? [{ path: `take[${at}]`, says: "is no input of this pattern that the call's reports say anything of." }]
      : [],
  );
  if (unknown.length > 0) return { status: "faults", faults: unknown };
  const amounts = found.estimates.flatMap((estimate, at) => {
    const taken = take[at];
    return estimate && taken ? [amountOf(taken, estimate)] : [];
  });
  const corrected = amounts.reduce(correct, call.pattern);
  const solved = solveAnew(corrected, { amounts, slack, solver });
  if (solved.status !== "solved") return solved;
  return {
    status: "revised",
    pattern: solved.pattern,
    changes: [
      ...amounts.flatMap((amount) => instructionChanges(call.pattern, amount)),
      ...patternChanges(call.pattern, solved.pattern),
    ],
    after: afterRevision(solved.pattern, { gaps: found.cellGaps, amounts }),
    replayed: replayedCall(call, solved.pattern, amounts.flatMap(misworkedCount)),
  };
}

function amountOf(taken: Taken, estimate: TakenEstimate): Amount {
  return { taken, estimate, amount: taken.kind === "count" ? Math.round(estimate.amount) : estimate.amount };
}

function correct(pattern: PatternDocument, { taken, amount }: Amount): PatternDocument {
  if (taken.kind === "count" && taken.by === "input") return pattern;
  const label = pattern.measurements.find(({ id }) => id === taken.id)?.label ?? taken.id;
  return adjustInput(pattern, taken, amount, `Correction of ${label}`);
}

type Solved =
  | { readonly status: "solved"; readonly pattern: PatternDocument }
  | Extract<Revision, { status: "infeasible" | "faults" }>;

/** Solves the groups of counts anew that an input taken by `input` bears on. */
function solveAnew(
  pattern: PatternDocument,
  { amounts, slack, solver }: { amounts: readonly Amount[]; slack: number; solver: Solver },
): Solved {
  const near = pattern.grading ?? {};
  const moved = movedCounts(pattern, amounts);
  let grading = near;
  for (const group of countGroups(pattern)) {
    if (group.measurements.length === 0 || !group.counts.some((id) => moved.has(id))) continue;
    const solution = solveCounts({ pattern, group, near, slack, solver });
    if (solution.status === "infeasible") return solution;
    if (solution.status !== "optimal") {
      const says = solution.status === "limit" ? "the search for the best was too long." : solution.says;
      return {
        status: "faults",
        faults: [{ path: "call.pattern", says: `the counts could not be solved anew: ${says}` }],
      };
    }
    grading = { ...grading, ...solution.grading };
  }
  return { status: "solved", pattern: { ...pattern, grading } };
}

/** Counts of the measurements with a target that an input taken by `input` moves. */
function movedCounts(pattern: PatternDocument, amounts: readonly Amount[]): ReadonlySet<string> {
  const count = pattern.measurements.length;
  const moved = amounts
    .filter(({ taken }) => taken.by === "input" && taken.kind !== "count")
    .flatMap(({ estimate }) =>
      pattern.measurements.filter((_, p) => pattern.sizes.some((_size, s) => estimate.movesCm[s * count + p] !== 0)),
    );
  return new Set(moved.flatMap(solvedCounts));
}

/** Where instructions make another number than the grading says: what they make, and what they should. */
function instructionChanges(pattern: PatternDocument, { taken, amount }: Amount): Change[] {
  if (taken.kind !== "count" || taken.by !== "input" || taken.size === undefined) return [];
  const graded = own(own(pattern.grading, taken.id), taken.size) ?? 0;
  return [{ path: "instructions", size: taken.size, was: graded + amount, becomes: graded }];
}

function misworkedCount({ taken: { kind, id, size }, amount }: Amount): MisworkedCount[] {
  return kind === "count" && size !== undefined ? [{ count: id, size, amount }] : [];
}

function afterRevision(
  pattern: PatternDocument,
  { gaps, amounts }: { gaps: readonly number[]; amounts: readonly Amount[] },
): AfterRevision[] {
  const index = indexPattern(pattern);
  return pattern.sizes.flatMap((size, s) =>
    pattern.measurements.map((measurement, p) => {
      const cell = s * pattern.measurements.length + p;
      const explained = amounts.reduce((sum, { estimate, amount }) => sum + amount * (estimate.movesCm[cell] ?? 0), 0);
      const gapCm = (gaps[cell] ?? 0) - explained;
      const predictedCm = measure(index, measurement, patternWorking(index, size.id)).cm;
      return { size: size.id, measurement: measurement.id, expectedCm: predictedCm + gapCm, gapCm };
    }),
  );
}
