import type { ExplainedDraft } from "@/engine/editing";
import type { LengthUnit } from "@/engine/units";
import { roundedToAddUp } from "@/ui/format-length";

export interface ShownLength {
  readonly cm: number;
  /** The sum of the lines up to this one, as shown. */
  readonly soFarCm: number;
}

/** Each line's length, rounded so that the shown ones add up; undefined where it cannot be calculated. */
export function shownLengths({ lines }: ExplainedDraft, unit: LengthUnit): (ShownLength | undefined)[] {
  const rounded = roundedToAddUp(
    lines.flatMap((line) => (line.status === "computed" ? [line.term.cm] : [])),
    unit,
  );
  let next = 0;
  let soFarCm = 0;
  return lines.map(({ status }) => {
    if (status !== "computed") return undefined;
    const cm = rounded[next] ?? 0;
    next += 1;
    soFarCm += cm;
    return { cm, soFarCm };
  });
}
