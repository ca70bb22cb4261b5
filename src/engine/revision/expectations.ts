import { gaps, type Cell } from "../gaps";
import type { CallDocument, PatternDocument } from "../pattern";
import { predict } from "../prediction";
import { replayedCall } from "./replayed-call";

/** Expected value of a measurement of one size at the pattern's gauge, before and after a correction, cm. */
export interface Expectation {
  readonly size: string;
  readonly measurement: string;
  readonly targetCm: { readonly before: number | null; readonly after: number | null };
  readonly designCm: { readonly before: number; readonly after: number };
  readonly gap: { readonly before: Cell; readonly after: Cell };
  /** Design plus gap; null where nothing is known of the gap. */
  readonly expectedCm: { readonly before: number | null; readonly after: number | null };
  /** Bounds of the 90 % interval of what is expected after. */
  readonly lowCm: number | null;
  readonly highCm: number | null;
  /** Whether the correction changes the design here. */
  readonly touched: boolean;
}

/** Differences below this are rounding errors, cm. */
const SAME_CM = 1e-9;

/**
 * Expected value of every measurement after a correction: the corrected design, plus the reports'
 * gap recomputed against it, with the counts and lengths that each tester really worked.
 *
 * @param call the call with the pattern as it is.
 * @param cells what `gaps` says of that call.
 * @param revised the corrected pattern: the same sizes, measurements and counts.
 * @returns through sizes, in each through measurements, in the pattern's order; lengths in cm.
 * @see docs/method.md#revision.
 */
export function expectations({
  call,
  cells,
  revised,
}: {
  call: CallDocument;
  cells: readonly Cell[];
  revised: PatternDocument;
}): Expectation[] {
  const after = gaps(replayedCall(call, revised));
  return call.pattern.sizes.flatMap((size, sizeAt) => {
    const old = predict({ pattern: call.pattern, size: size.id }).measurements;
    const corrected = predict({ pattern: revised, size: size.id }).measurements;
    return call.pattern.measurements.map((measurement, index) => {
      const cellAt = sizeAt * call.pattern.measurements.length + index;
      return expectation({
        was: present(old[index]),
        becomes: present(corrected[index]),
        gap: { before: present(cells[cellAt]), after: present(after.cells[cellAt]) },
      });
    });
  });
}

interface Promised {
  readonly targetCm: number | null;
  readonly designCm: number;
}

function expectation({
  was,
  becomes,
  gap,
}: {
  was: Promised;
  becomes: Promised;
  gap: Expectation["gap"];
}): Expectation {
  return {
    size: gap.after.size,
    measurement: gap.after.measurement,
    targetCm: { before: was.targetCm, after: becomes.targetCm },
    designCm: { before: was.designCm, after: becomes.designCm },
    gap,
    expectedCm: { before: plus(was.designCm, gap.before.gapCm), after: plus(becomes.designCm, gap.after.gapCm) },
    lowCm: plus(becomes.designCm, gap.after.lowCm),
    highCm: plus(becomes.designCm, gap.after.highCm),
    touched: Math.abs(becomes.designCm - was.designCm) > SAME_CM,
  };
}

function plus(cm: number, gapCm: number | null): number | null {
  return gapCm === null ? null : cm + gapCm;
}

function present<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new RangeError("the analysis or the correction is of another pattern");
  return value;
}
