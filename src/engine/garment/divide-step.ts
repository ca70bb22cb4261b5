import type { StepOf } from "../pattern";
import { withNoun } from "../shaping";
import { nextCopies } from "./copies";
import type { GarmentWork } from "./garment-work";
import { centredColumns, isRound, makePart, stitchWidthCm, type LivePart } from "./live-part";
import { fitColumns, type Column } from "./profile";

interface Share {
  readonly part: string;
  readonly copy: number | undefined;
  readonly stitches: number;
}

/**
 * Divides a part into parts that are worked apart, in needle order: as a right-side row meets them, from the right edge to the
 * left. In its own piece each goes on where its stitches are; in another piece it begins anew. What is left over or missing is
 * a fault, and the last parts get what there is, so that no stitch is lost.
 */
export function divideStep(work: GarmentWork, part: LivePart, step: StepOf<"divide">): void {
  const shares = sharesOf(work, part, step);
  const total = part.stitches;
  part.state = "ended";
  let before = 0;
  for (const share of shares) {
    const made = madePart(work, part, { step, share, before, total });
    if (made !== undefined) {
      for (const [marker, position] of part.markers)
        if (position >= before && position < before + share.stitches) made.markers.set(marker, position - before);
      work.setPart(made);
    }
    before += share.stitches;
  }
}

function sharesOf(work: GarmentWork, part: LivePart, step: StepOf<"divide">): Share[] {
  const asked = nextCopies(step.into).map(({ part, copy, stitches }) => ({
    part,
    copy,
    stitches: work.number(step, stitches),
  }));
  const sum = asked.reduce((total, { stitches }) => total + stitches, 0);
  if (sum !== part.stitches && !part.isFaulty) {
    const numbers = asked.map(({ stitches }) => stitches).join(" + ");
    work.fault(
      step.id,
      `“${part.id}” has ${withNoun(part.stitches, "stitch")}, and ${asked.length === 1 ? "" : `${numbers} = `}${sum} are divided. Make them the same.`,
    );
  }
  let left = part.stitches;
  const shares = asked.map(({ part, copy, stitches }, index) => {
    const taken = index === asked.length - 1 ? left : Math.min(stitches, left);
    left -= taken;
    return { part, copy, stitches: taken };
  });
  return work.isSwapped(step, part) ? shares.toReversed() : shares;
}

function madePart(
  work: GarmentWork,
  part: LivePart,
  { step, share, before, total }: { step: StepOf<"divide">; share: Share; before: number; total: number },
): LivePart | undefined {
  const piece = work.piece(share.part) ?? part.piece;
  const copy = share.copy ?? (piece.id === part.piece.id ? part.copy : 1);
  const existing = work.part(share.part, copy);
  if (existing !== undefined && existing !== part) {
    work.fault(step.id, `There are stitches “${share.part}” already. Give these another name.`);
    return undefined;
  }
  const isOwn = piece.id === part.piece.id;
  const fabric = isOwn ? part.fabric : piece.fabric;
  const { stitches } = share;
  return makePart({
    id: share.part,
    copy,
    piece,
    worked: "flat",
    fabric,
    stitches,
    step: step.id,
    nextSide: part.nextSide,
    frame: isOwn ? part.frame : undefined,
    row: isOwn ? part.row : 0,
    columns: isOwn
      ? columnsOf(work, part, { stitches, before, total })
      : centredColumns(stitches * work.numbers.stitchCm(fabric)),
  });
}

/**
 * Of a flat part, so many stitches from its right edge. A round is a tube laid flat: its stitches go along the front from right
 * to left and along the back to the right again, and a part of them lies about the place of its middle.
 */
function columnsOf(
  work: GarmentWork,
  part: LivePart,
  { stitches, before, total }: { stitches: number; before: number; total: number },
): Column[] {
  const stitchCm = work.numbers.stitchCm(part.fabric);
  if (!isRound(part)) {
    const rightCm = part.rightCm - before * stitchCm;
    return fitColumns(part.columns, rightCm - stitches * stitchCm, rightCm);
  }
  const middle = before + stitches / 2;
  const folded = middle <= total / 2 ? middle : total - middle;
  const middleCm = part.rightCm - folded * 2 * stitchWidthCm(part, stitchCm);
  const halfCm = (stitches * stitchCm) / 2;
  return fitColumns(part.columns, middleCm - halfCm, middleCm + halfCm);
}
