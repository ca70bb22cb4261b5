import type { StepOf } from "../pattern";
import { planShaping, rowNoun, shapingText, withNoun } from "../shaping";
import { placeIn } from "./change-stitches";
import type { GarmentWork } from "./garment-work";
import { isRound, setSpan, setWidth, stitchWidthCm, type LivePart } from "./live-part";
import { hasStitches, setFabric } from "./work-step";
import { workRow } from "./work-row";

/**
 * Works a section of a pattern of format 1, which says with how many stitches it begins and ends, and not in which rows they
 * change: each row has its share of the change, so that rows × (from + to) ÷ 2 stitches are worked, and in between not whole ones.
 */
export function sectionStep(work: GarmentWork, part: LivePart, step: StepOf<"section">): void {
  setFabric(work, part, part.piece.fabric);
  const counts = {
    from: work.number(step, step.from),
    to: work.number(step, step.to),
    rows: work.number(step, step.rows),
  };
  sayWhatIsMissing(work, part, { step, counts });
  const { from, to, rows } = counts;
  const stitchCm = stitchWidthCm(part, work.numbers.stitchCm(part.fabric));
  if (part.stitches !== from) {
    part.stitches = from;
    setWidth(part, from * stitchCm);
  }
  const edges = placeIn(work, part, { step, at: step.shaping?.edges ?? "both" });
  const leftShare = edges === "both" || isRound(part) ? 0.5 : edges === "left" ? 1 : 0;
  const first = { leftCm: part.leftCm, rightCm: part.rightCm };
  const widen = (stitches: number) => {
    const widerCm = (stitches - from) * stitchCm;
    setSpan(part, first.leftCm - leftShare * widerCm, first.rightCm + (1 - leftShare) * widerCm);
  };
  if (rows > 0 && from + to === 0) hasStitches(work, part, step);
  else
    for (let row = 1; row <= rows; row += 1) {
      const stitches = from + ((to - from) * (row - 0.5)) / rows;
      widen(stitches);
      const { leftCm, rightCm } = part;
      if (!workRow(work, part, step.id, { leftCm, rightCm, stitches, live: stitches })) return;
    }
  part.stitches = to;
  widen(to);
}

function sayWhatIsMissing(
  work: GarmentWork,
  part: LivePart,
  {
    step,
    counts,
  }: { step: StepOf<"section">; counts: { readonly from: number; readonly to: number; readonly rows: number } },
): void {
  const difference = counts.from - part.stitches;
  if (difference !== 0)
    work.fault(
      step.id,
      `It starts on ${withNoun(counts.from, "stitch")}, and there are ${part.stitches}. Say what becomes of the difference: stitches that are bound off, held or added, and at which edge.`,
    );
  const outcome = planShaping(counts, step.shaping);
  if (outcome.status === "planned") return;
  const noun = rowNoun({ worked: isRound(part) ? "round" : "flat" });
  work.fault(step.id, shapingText(outcome, { counts, ...(step.shaping ? { shaping: step.shaping } : {}), noun }));
}
