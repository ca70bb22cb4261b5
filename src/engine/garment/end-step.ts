import type { StepOf } from "../pattern";
import type { GarmentWork } from "./garment-work";
import { unequalText } from "./join-step";
import { endsOf, type EdgeRun, type LivePart } from "./live-part";

/**
 * Ends a part: its stitches are bound off, fastened off or worked together with as many of another part, and leave the edge that
 * the step names. Held stitches stay, for a later step to go on with.
 */
export function endStep(work: GarmentWork, part: LivePart, step: StepOf<"end">): void {
  const isTogether = step.how === "graft" || step.how === "three-needle";
  const other = step.with && work.part(step.with.part, work.copyOf(step.with, step, part.copy));
  if (isTogether && step.with === undefined)
    work.fault(
      step.id,
      `“${part.id}” is worked together with other stitches, and they are not named. Name them as “with”.`,
    );
  if (step.with !== undefined && other === undefined)
    work.fault(step.id, `There are no stitches “${step.with.part}” to work “${part.id}” together with.`);
  if (other !== undefined) endTogether(work, part, { step, other });
  const { from, to } = endsOf(part);
  const isHeld = step.how === "hold";
  const run: EdgeRun = {
    step: step.id,
    rows: 0,
    stitches: isHeld ? 0 : part.stitches,
    held: isHeld ? part.stitches : 0,
    lengthCm: topLengthCm(part),
    from,
    to,
  };
  part.top.push(run);
  work.addToEdge(step.edge, part.copy, run);
  part.state = isHeld ? "held" : "ended";
}

/** The other part may name this one in a step of its own. */
function endTogether(
  work: GarmentWork,
  part: LivePart,
  { step, other }: { step: StepOf<"end">; other: LivePart },
): void {
  if (other === part)
    return work.fault(step.id, `“${part.id}” cannot be worked together with itself. Divide it into two parts first.`);
  if (other.stitches !== part.stitches && !part.isFaulty && !other.isFaulty)
    work.fault(step.id, unequalText(part, other));
  if (other.state === "ended") return;
  const lengthCm = topLengthCm(other);
  other.top.push({ step: step.id, rows: 0, stitches: other.stitches, held: 0, lengthCm, ...endsOf(other) });
  Object.assign(other, { state: "ended", lastStep: step.id });
}

/** Along the tops of its columns, from the middle of one to the middle of the next where they are not level, cm. */
function topLengthCm({ columns, worked }: LivePart): number {
  const widthCm = columns.reduce((sum, { leftCm, rightCm }) => sum + rightCm - leftCm, 0);
  const [first, last] = [columns[0], columns.at(-1)];
  if (worked !== "flat") return 2 * widthCm;
  if (first === undefined || last === undefined || columns.length === 1) return widthCm;
  const points = [
    { xCm: first.leftCm, yCm: first.topCm },
    ...columns.map(({ leftCm, rightCm, topCm }) => ({ xCm: (leftCm + rightCm) / 2, yCm: topCm })),
    { xCm: last.rightCm, yCm: last.topCm },
  ];
  return points.slice(1).reduce((sum, { xCm, yCm }, index) => {
    const before = points[index] ?? { xCm, yCm };
    return sum + Math.hypot(xCm - before.xCm, yCm - before.yCm);
  }, 0);
}
