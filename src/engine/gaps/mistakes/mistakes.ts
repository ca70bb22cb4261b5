import { at } from "../../linear-algebra";
import type { Block, BlockEffect, Group, Readings } from "../../variance-components";
import type { TesterHabits } from "../earlier/tester-habits";

export interface SwatchEffect extends BlockEffect {
  /** Whose gauge it is the error of; null for a drift of all fabrics together, and for growth. */
  readonly fabric: string | null;
  readonly direction: "stitches" | "rows" | null;
}

/** A tester's readings with the variances that they would have if they were mistakes, beside their honest ones. */
export interface TesterBlock extends Block {
  readonly effects: readonly SwatchEffect[];
  /** By reading, tolerances²; 0 where a person has decided that it counts. */
  readonly wrongReadingVariances: Float64Array;
  /** By effect: of the swatch behind it; 0 where there is none, or a person has decided that it counts. */
  readonly wrongSwatchVariances: Float64Array;
  /** By reading, tolerances². */
  readonly wrongTesterVariances: Float64Array;
  /** What is known of a tester from before, and taken into account in all of the above. */
  readonly habits: TesterHabits | null;
}

interface TesterGroup extends Group {
  readonly blocks: readonly TesterBlock[];
}

export interface TesterReadings extends Readings {
  readonly groups: readonly TesterGroup[];
}

/** What is believed of one tester's mistakes. */
export interface BlockMistakes {
  /** Chances from 0 to 1 that a reading, an effect's swatch, the whole tester is a mistake. */
  readonly readings: Float64Array;
  readonly swatches: Float64Array;
  readonly tester: number;
  /** What is added to the honest variances on that account, by reading and by effect. */
  readonly readingVariances: Float64Array;
  readonly effectVariances: Float64Array;
  /** Log density of each reading given all others, itself perhaps a mistake. */
  readonly logDensities: Float64Array;
  /** Log density of the whole block with mistakes, less that with the variances that stand for them. */
  readonly logCorrection: number;
}

/** Of each tester, size by size as the readings are. */
export type Mistakes = readonly (readonly BlockMistakes[])[];

/** Nothing is a mistake. */
export function noMistakes({ groups }: TesterReadings): Mistakes {
  return groups.map(({ blocks }) =>
    blocks.map(({ values, effects }) => ({
      readings: new Float64Array(values.length),
      swatches: new Float64Array(effects.length),
      tester: 0,
      readingVariances: new Float64Array(values.length),
      effectVariances: new Float64Array(effects.length),
      logDensities: new Float64Array(values.length),
      logCorrection: 0,
    })),
  );
}

/** The readings with the variances that they have on account of mistakes. */
export function withMistakes(readings: TesterReadings, mistakes: Mistakes): TesterReadings {
  return {
    ...readings,
    groups: readings.groups.map((group, g) => ({
      ...group,
      blocks: group.blocks.map((block, b) => {
        const found = mistakes[g]?.[b];
        return found === undefined ? block : withVariances(block, found);
      }),
    })),
  };
}

/** A block with more variance of its readings and its effects. */
export function withVariances(
  block: TesterBlock,
  { readingVariances, effectVariances }: Pick<BlockMistakes, "readingVariances" | "effectVariances">,
): TesterBlock {
  return {
    ...block,
    knownVariances: block.knownVariances.map((variance, row) => variance + at(readingVariances, row)),
    effects: block.effects.map((effect, which) => ({
      ...effect,
      knownVariance: effect.knownVariance + at(effectVariances, which),
    })),
  };
}

/** How many readings, swatches and testers there are, and how many of them are mistakes by their chances. */
export function countMistakes({ groups }: TesterReadings, mistakes: Mistakes) {
  const counts = { reading: { all: 0, wrong: 0 }, swatch: { all: 0, wrong: 0 }, tester: { all: 0, wrong: 0 } };
  groups.forEach(({ blocks }, g) => {
    blocks.forEach((block, b) => {
      const found = mistakes[g]?.[b];
      if (found === undefined) return;
      counts.tester.all += 1;
      counts.tester.wrong += found.tester;
      counts.reading.all += found.readings.length;
      for (const chance of found.readings) counts.reading.wrong += chance;
      block.wrongSwatchVariances.forEach((variance, effect) => {
        if (variance === 0) return;
        counts.swatch.all += 1;
        counts.swatch.wrong += at(found.swatches, effect);
      });
    });
  });
  return counts;
}
