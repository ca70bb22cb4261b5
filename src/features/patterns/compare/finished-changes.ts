import type { PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import { comparedSizes, type SizedChange } from "./sized-changes";

/** The finished measurements that change, as far as shown lengths tell. */
export function finishedChanges(before: PatternDocument, after: PatternDocument, unit: LengthUnit): SizedChange[] {
  const olds = finishedByMeasurement(before);
  const news = finishedByMeasurement(after);
  const sizes = comparedSizes(before, after);
  return [...new Set([...news.keys(), ...olds.keys()])].flatMap((key) => {
    const [was, becomes] = [olds.get(key), news.get(key)];
    const words = (cm: number | null | undefined) => (cm == null ? null : formatLengthNumber(cm, unit));
    const sides = sizes.map((size) => ({
      was: words(was?.cmBySize.get(size.key)),
      becomes: words(becomes?.cmBySize.get(size.key)),
    }));
    if (sides.every((side) => side.was === side.becomes)) return [];
    return [{ key, label: (becomes ?? was)?.label ?? key, sides }];
  });
}

function finishedByMeasurement(pattern: PatternDocument) {
  return new Map(
    finishedMeasurements(pattern).map(({ measurement, sizes }) => [
      measurement.id,
      {
        label: `${measurement.letter} ${measurement.label}`,
        cmBySize: new Map(sizes.map(({ size, designCm }) => [size, designCm])),
      },
    ]),
  );
}
