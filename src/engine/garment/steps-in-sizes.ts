import {
  roundParts,
  stepsOfPiece,
  type GarmentPiece,
  type GarmentStep,
  type PatternDocument,
  type StepPart,
} from "../pattern";
import type { RowNoun } from "../shaping";
import type { GarmentFault, GarmentWork } from "./garment-work";
import { noteResult } from "./note-result";
import { withNumbers, type NumberedGarment } from "./with-numbers";
import { workGarment } from "./work-garment";

/** A step in one size. */
export interface StepInSize {
  readonly size: string;
  /** Absent where a count has no number yet, in it or in a step that it goes on from. */
  readonly status: "worked" | "fault" | "absent";
  /** What it leaves of each part that it is worked in or makes; empty where it is absent. */
  readonly onNeedle: readonly { readonly part: StepPart["part"]; readonly stitches: number }[];
  /** Number of the last row of its part; null where it is absent. */
  readonly row: number | null;
  /** What is wrong or missing, in sentences. */
  readonly messages: readonly string[];
}

export interface StepInSizes {
  readonly step: GarmentStep;
  readonly noun: RowNoun;
  /** In the pattern's order. */
  readonly sizes: readonly StepInSize[];
}

/** What of a seam is wrong, in one size. */
export interface SeamFault {
  /** Its index in the garment. */
  readonly seam: number;
  readonly size: string;
  readonly message: string;
}

export interface PieceSteps {
  readonly piece: GarmentPiece;
  readonly steps: readonly StepInSizes[];
}

interface StepsInSizes {
  readonly pieces: readonly PieceSteps[];
  readonly seams: readonly SeamFault[];
}

/**
 * What every step of every piece leaves on the needle in every size, and what is wrong with it.
 *
 * @param pattern a parsed pattern; counts may still be without numbers.
 * @param blocked ids of steps that are left out in any case.
 * @returns pieces and their steps in the garment's order, and what is wrong with its seams.
 */
export function stepsInSizes(pattern: PatternDocument, blocked?: ReadonlySet<string>): StepsInSizes {
  const sized = pattern.sizes.map(({ id }) => {
    const numbered = withNumbers(pattern, id, blocked);
    const work = workGarment(numbered.pattern, id, noteResult);
    return { size: id, numbered, work, faults: faultsByStep(work) };
  });
  const rounds = roundParts(pattern.garment);
  const pieces = pattern.garment.pieces.map((piece) => ({
    piece,
    steps: stepsOfPiece(pattern.garment, piece.id).map((step) => ({
      ...({ step, noun: rounds.has(step.in.part) ? "round" : "row" } as const),
      sizes: sized.map((each) => stepInSize(step, each)),
    })),
  }));
  const seams = sized.flatMap(({ size, work }) =>
    work.faults.flatMap(({ seam, message }) => {
      const sewn = work.garment.seams[seam ?? -1];
      return sewn === undefined ? [] : [{ seam: pattern.garment.seams.indexOf(sewn), size, message }];
    }),
  );
  return { pieces, seams };
}

function faultsByStep({ faults }: GarmentWork): Map<string | null, GarmentFault[]> {
  const found = new Map<string | null, GarmentFault[]>();
  for (const fault of faults) {
    const known = found.get(fault.step);
    if (known === undefined) found.set(fault.step, [fault]);
    else known.push(fault);
  }
  return found;
}

interface Sized {
  readonly size: string;
  readonly numbered: NumberedGarment;
  readonly work: GarmentWork;
  readonly faults: ReadonlyMap<string | null, readonly GarmentFault[]>;
}

function stepInSize(step: GarmentStep, { size, numbered, work, faults }: Sized): StepInSize {
  const missing = numbered.absent.get(step.id);
  if (missing !== undefined) {
    const messages = missing.length === 0 ? [] : [missingText(missing)];
    return { size, status: "absent", onNeedle: [], row: null, messages };
  }
  const { onNeedle = [], row = null } = work.results.get(step.id) ?? {};
  const messages = (faults.get(step.id) ?? []).map(({ message }) => message);
  return { size, status: messages.length > 0 ? "fault" : "worked", onNeedle, row, messages };
}

function missingText(labels: readonly string[]): string {
  const names = labels.map((label) => `“${label}”`);
  return `${names.join(" and ")} ${names.length === 1 ? "has" : "have"} no number yet. Enter ${names.length === 1 ? "it" : "them"} to see how this is worked.`;
}
