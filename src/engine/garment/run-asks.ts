import type { GarmentStep } from "../pattern";
import { difference } from "./linear-number";
import type { Amount, RunPart, StitchRun } from "./stitch-run";

/** That so many stitches at least are left of a part. */
export function askLeft(run: StitchRun, { stitches }: RunPart, step: GarmentStep, min: number): void {
  if (stitches === null) return;
  const message = `${run.text(stitches)} stitches are left, and at least ${min} must be`;
  run.ask(step, stitches, { min, max: Infinity }, message);
}

/** That something has room: rows for a shaping, stitches for a marker. */
export function askRoom(
  run: StitchRun,
  step: GarmentStep,
  { needs, has, what, noun = "stitches" }: { needs: Amount; has: Amount; what: string; noun?: "rows" | "stitches" },
): void {
  if (needs === null || has === null) return;
  run.ask(
    step,
    difference(has, needs),
    { min: 0, max: Infinity },
    `${what} takes ${run.text(needs)} ${noun} of ${run.text(has)}`,
  );
}
