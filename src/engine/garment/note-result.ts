import { homeOfStep, type GarmentStep } from "../pattern";
import type { GarmentWork } from "./garment-work";

/** Notes what a step leaves, of its first copy. */
export function noteResult(work: GarmentWork, step: GarmentStep, copy: number): void {
  if (work.results.has(step.id)) return;
  const named = step.do === "divide" ? [...new Set(step.into.map(({ part }) => part))] : [homeOfStep(step)];
  const onNeedle = named.flatMap((id) => {
    const part = work.part(id, copy) ?? work.part(id, 1);
    if (part === undefined) return [];
    return [{ part: id, stitches: part.state === "ended" ? 0 : part.stitches }];
  });
  const row = work.part(homeOfStep(step), copy)?.row ?? 0;
  work.results.set(step.id, { onNeedle, row });
}
