import { estimateInputs, screenOutliers, type InputEstimate } from "../gaps";
import { joinAsNeeded, solveCounts, solvedCounts, type Clash } from "../grading";
import type { Solver } from "../integer-program";
import { ownValue, type CallDocument, type Fault, type PatternDocument } from "../pattern";
import { indexPattern, measure, patternWorking } from "../prediction";
import { adjustInput } from "./adjust-input";
import { changedNumbers, type Change } from "./changed-numbers";
import type { InstructionError } from "./instruction-errors";
import { replayedCall } from "./replayed-call";
import type { ReviseRequest, AcceptedProposal } from "./revise-request";

/** Even steps matter more to a designer than the last millimetre: deviations up to a quarter of a tolerance have no cost (docs/method.md#grading). */
const DEFAULT_SLACK = 0.25;

export type Revision =
  | {
      readonly status: "revised";
      readonly pattern: PatternDocument;
      readonly changes: readonly Change[];
      readonly after: readonly AfterRevision[];
      /** The same reports against the revised pattern, with the counts really worked: the input of `gaps` after the revision. */
      readonly replayed: CallDocument;
    }
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

export interface AfterRevision {
  readonly size: string;
  readonly measurement: string;
  /** Expected value at the pattern's gauge. */
  readonly expectedCm: number;
  /** Expected value minus the revised pattern's prediction. */
  readonly gapCm: number;
}

interface AcceptedAmount {
  readonly proposal: AcceptedProposal;
  readonly estimate: InputEstimate;
  /** In the input's own unit; a whole number of stitches or rows. */
  readonly amount: number;
}

/**
 * Revises a pattern with the accepted proposals: the new pattern, its changes, and the expected measurements.
 *
 * Accepted by `input`, the input is corrected and the counts that depend on it are solved again, close to the tested
 * ones; by `published`, the counts are unchanged. A proposal for a count fixes the instructions or adopts the number really worked.
 *
 * @param solver an exact integer solver.
 * @see docs/method.md#revision.
 */
export function reviseCall({ call, take, slack = DEFAULT_SLACK }: ReviseRequest, solver: Solver): Revision {
  const screened = screenOutliers(call).call;
  const found = estimateInputs(screened, take);
  const unknown = found.estimates.flatMap((estimate, index) =>
    estimate === null
      ? [
          {
            path: `take[${index}]`,
            says: "is not an input of this pattern about which the call's reports have information.",
          },
        ]
      : [],
  );
  if (unknown.length > 0) return { status: "faults", faults: unknown };
  const amounts = found.estimates.flatMap((estimate, index) => {
    const taken = take[index];
    return estimate && taken ? [amountOf(taken, estimate)] : [];
  });
  const corrected = amounts.reduce(correct, call.pattern);
  const solved = solveAgain(corrected, { amounts, slack, solver });
  if (solved.status !== "solved") return solved;
  return {
    status: "revised",
    pattern: solved.pattern,
    changes: [
      ...amounts.flatMap((amount) => instructionChanges(call.pattern, amount)),
      ...changedNumbers(call.pattern, solved.pattern),
    ],
    after: afterRevision(solved.pattern, { gaps: found.cellGaps, amounts }),
    replayed: replayedCall(call, solved.pattern, amounts.flatMap(instructionError)),
  };
}

function amountOf(proposal: AcceptedProposal, estimate: InputEstimate): AcceptedAmount {
  return { proposal, estimate, amount: proposal.kind === "count" ? Math.round(estimate.amount) : estimate.amount };
}

function correct(pattern: PatternDocument, { proposal, amount }: AcceptedAmount): PatternDocument {
  if (proposal.kind === "count" && proposal.by === "input") return pattern;
  const label = pattern.measurements.find(({ id }) => id === proposal.id)?.label ?? proposal.id;
  return adjustInput(pattern, proposal, amount, `Correction of ${label}`);
}

type Solved =
  | { readonly status: "solved"; readonly pattern: PatternDocument }
  | Extract<Revision, { status: "infeasible" | "faults" }>;

/** Solves again the groups of counts that depend on an input accepted by `input`. */
function solveAgain(
  pattern: PatternDocument,
  { amounts, slack, solver }: { amounts: readonly AcceptedAmount[]; slack: number; solver: Solver },
): Solved {
  const near = pattern.grading ?? {};
  const moved = affectedCounts(pattern, amounts);
  const solved = joinAsNeeded(pattern, (groups) => {
    let grading = near;
    for (const group of groups) {
      if (group.measurements.length === 0 || !group.counts.some((id) => moved.has(id))) continue;
      const solution = solveCounts({ pattern, group, near, slack, solver });
      if (solution.status === "infeasible") return { ...solution, gradings: [] };
      if (solution.status !== "optimal") {
        const says = solution.status === "limit" ? "the search for the optimum took too long." : solution.message;
        const fault = { path: "call.pattern", says: `the counts could not be solved again: ${says}` };
        return { status: "faults" as const, faults: [fault], gradings: [] };
      }
      grading = { ...grading, ...solution.grading };
    }
    return { status: "solved" as const, gradings: [grading], grading };
  });
  if (solved.status === "infeasible") return { status: solved.status, clash: solved.clash };
  if (solved.status === "faults") return { status: solved.status, faults: solved.faults };
  return { status: "solved", pattern: { ...pattern, grading: solved.grading } };
}

/** Counts of the measurements with a target that are affected by an input accepted by `input`. */
function affectedCounts(pattern: PatternDocument, amounts: readonly AcceptedAmount[]): ReadonlySet<string> {
  const count = pattern.measurements.length;
  const moved = amounts
    .filter(({ proposal }) => proposal.by === "input" && proposal.kind !== "count")
    .flatMap(({ estimate }) =>
      pattern.measurements.filter((_, p) =>
        pattern.sizes.some((_size, s) => estimate.sensitivitiesCm[s * count + p] !== 0),
      ),
    );
  return new Set(moved.flatMap(solvedCounts));
}

/** Errors in the instructions: the number that they produce, and the number that they should. */
function instructionChanges(pattern: PatternDocument, { proposal, amount }: AcceptedAmount): Change[] {
  if (proposal.kind !== "count" || proposal.by !== "input" || proposal.size === undefined) return [];
  const graded = ownValue(ownValue(pattern.grading, proposal.id), proposal.size) ?? 0;
  return [{ path: "instructions", size: proposal.size, was: graded + amount, becomes: graded }];
}

function instructionError({ proposal: { kind, id, size }, amount }: AcceptedAmount): InstructionError[] {
  return kind === "count" && size !== undefined ? [{ count: id, size, amount }] : [];
}

function afterRevision(
  pattern: PatternDocument,
  { gaps, amounts }: { gaps: readonly number[]; amounts: readonly AcceptedAmount[] },
): AfterRevision[] {
  const index = indexPattern(pattern);
  return pattern.sizes.flatMap((size, s) =>
    pattern.measurements.map((measurement, p) => {
      const cell = s * pattern.measurements.length + p;
      const explained = amounts.reduce(
        (sum, { estimate, amount }) => sum + amount * (estimate.sensitivitiesCm[cell] ?? 0),
        0,
      );
      const gapCm = (gaps[cell] ?? 0) - explained;
      const predictedCm = measure(index, measurement, patternWorking(index, size.id)).cm;
      return { size: size.id, measurement: measurement.id, expectedCm: predictedCm + gapCm, gapCm };
    }),
  );
}
