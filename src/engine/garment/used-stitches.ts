import type { GarmentPiece, GarmentStep, PatternDocument } from "../pattern";
import { planOf } from "./garment-plan";
import type { GarmentFault } from "./garment-work";
import { sizeNumbers } from "./size-numbers";
import { timesMade } from "./times-made";
import { workGarment } from "./work-garment";

/** Stitches of all copies of a piece in one fabric and yarn. */
interface UsedStitches {
  readonly piece: string;
  readonly fabric: string;
  readonly yarn: string;
  readonly stitches: number;
}

export interface GarmentStitches {
  /** In the pattern's order of pieces; without what has no stitches. */
  readonly used: readonly UsedStitches[];
  /** What of the steps cannot be worked, so that the stitches are those of the rest. */
  readonly faults: readonly GarmentFault[];
}

/**
 * Stitches worked in a size, exact from its rows, by piece, fabric and yarn. A section of format 1 says how many it has, made ×
 * rows × (from + to) ÷ 2, and in no row a whole number.
 *
 * @param pattern a parsed pattern whose counts all have numbers.
 * @param size id of one of its sizes.
 * @returns stitches; half ones only where a section of format 1 changes by an odd number over an odd number of rows.
 * @throws {RangeError} on a missing number, which the document's checks rule out.
 * @see docs/method.md#working-a-garment.
 */
export function usedStitches(pattern: PatternDocument, size: string): GarmentStitches {
  const { pieces, steps } = pattern.garment;
  const isSaid = steps.every((step) => step.do === "start" || step.do === "section" || step.do === "end");
  const worked = isSaid ? { used: [], faults: [] } : stitchesOfRows(pattern, size);
  const used = new Map<string, UsedStitches>();
  for (const use of [...stitchesOfSections(pattern, size), ...worked.used]) {
    const key = `${use.piece} ${use.fabric} ${use.yarn}`;
    used.set(key, { ...use, stitches: (used.get(key)?.stitches ?? 0) + use.stitches });
  }
  const order = new Map(pieces.map(({ id }, index) => [id, index]));
  return {
    used: [...used.values()].toSorted((one, other) => (order.get(one.piece) ?? 0) - (order.get(other.piece) ?? 0)),
    faults: worked.faults,
  };
}

function stitchesOfSections(pattern: PatternDocument, size: string): UsedStitches[] {
  const { numberOf } = sizeNumbers(pattern, size);
  const { pieceOf } = planOf(pattern.garment);
  return pattern.garment.steps.flatMap((step) => {
    const piece = pieceOf.get(step.in.part);
    if (step.do !== "section" || piece === undefined) return [];
    const [from, to, rows] = [step.from, step.to, step.rows].map((number) => numberOf(number).value);
    const made = step.in.copy === undefined ? piece.made : 1;
    const stitches = made * (((rows ?? 0) * ((from ?? 0) + (to ?? 0))) / 2);
    return stitches === 0 ? [] : [{ piece: piece.id, fabric: piece.fabric, yarn: yarnOf(step, piece), stitches }];
  });
}

function stitchesOfRows(pattern: PatternDocument, size: string): GarmentStitches {
  const work = workGarment(pattern, size);
  const stepById = new Map(pattern.garment.steps.map((step) => [step.id, step]));
  const times = new Map(pattern.garment.pieces.map((piece) => [piece.id, timesMade(work, piece)]));
  const isSection = (step: string | null) => step !== null && stepById.get(step)?.do === "section";
  return {
    used: work.rows
      .filter(({ step }) => !isSection(step))
      .map(({ part: { piece, copy }, step, fabric, rows, worked }) => ({
        ...{ piece: piece.id, fabric, yarn: yarnOf(stepById.get(step), piece) },
        stitches: (times.get(piece.id)?.get(copy) ?? 1) * rows * worked,
      })),
    faults: work.faults.filter(({ step }) => step !== null && !isSection(step)),
  };
}

function yarnOf(step: GarmentStep | undefined, piece: GarmentPiece): string {
  const own = step?.do === "work" || step?.do === "section" ? step.yarn : undefined;
  return own ?? piece.yarn;
}
