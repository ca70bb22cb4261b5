import { at } from "../../linear-algebra";
import type { PatternDocument } from "../../pattern";
import type { GapFit } from "../model/fit-gap-surface";
import type { TesterPlace } from "../model/tester-places";

/** Chances that what one tester sent is a mistake: all of it, a reading, or a fabric's swatch, by id. */
export interface TesterMistakes {
  readonly all: number;
  readonly readings: readonly { readonly measurement: string; readonly cm: number; readonly chance: number }[];
  readonly swatches: ReadonlyMap<string, number>;
}

/** @returns the chances by tester id, from the model with the causes that were found. */
export function testerMistakes(
  { measurements }: PatternDocument,
  fit: GapFit,
  places: readonly TesterPlace[],
): ReadonlyMap<string, TesterMistakes> {
  return new Map(
    places.map(({ gaps: { tester, gaps, block }, size, block: which }) => {
      const found = fit.mistakes[size]?.[which];
      const readings = gaps.map(({ measurement, cm }, row) => ({
        measurement: measurements[measurement]?.id ?? "",
        cm,
        chance: found ? at(found.readings, row) : 0,
      }));
      const swatches = new Map<string, number>();
      block.effects.forEach(({ fabric }, effect) => {
        if (fabric === null || found === undefined) return;
        swatches.set(fabric, Math.max(swatches.get(fabric) ?? 0, at(found.swatches, effect)));
      });
      return [tester.id, { all: found?.tester ?? 0, readings, swatches }];
    }),
  );
}
