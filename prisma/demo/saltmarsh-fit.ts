import type { CallDocument, PatternDocument, Tester } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import { seededRandom, type SeededRandom } from "@/engine/seeded-random";

type FitNote = NonNullable<Tester["fit"]>[number];

/** What is wrong with the ease and not with the counts: from here up the bust feels tight. The README tells it. */
export const PLANTED_FIT = { area: "bust", feels: "tight", from: "size-3x" } as const;

/** A seed of its own, so that the call's other numbers do not depend on what is said of the fit. */
const SEED = 20261126;
const SAYS_SO = 0.4;
const OTHERWISE = 0.15;
/** A garment this far from what was published is felt, in tolerances. */
const FELT = 1.2;

const WORDS: Readonly<Record<FitNote["scale"], readonly string[]>> = {
  [-2]: ["I could not raise my arms in it."],
  [-1]: [
    "A little close when I sit down.",
    "Snug; I would like a hand's width more.",
    "It pulls when I reach forward.",
  ],
  0: ["Just as I like it.", "Fits as in the photograph."],
  1: ["Roomy; I could wear a shirt below it.", "It stands away from me a little."],
  2: ["Slips off when I bend over."],
};

/** The call with what its invented testers say of the fit at bust and upper arm. */
export function withFit(call: CallDocument, real: PatternDocument): CallDocument {
  const random = seededRandom(SEED);
  return {
    ...call,
    testers: call.testers.map((tester) => ({ ...tester, fit: fitNotes(tester, { call, real, random }) })),
  };
}

interface FitChoices {
  readonly call: CallDocument;
  readonly real: PatternDocument;
  readonly random: SeededRandom;
}

function fitNotes(tester: Tester, { call, real, random }: FitChoices): FitNote[] {
  const { sizes } = call.pattern;
  const at = (id: string) => sizes.findIndex((size) => size.id === id);
  const isPlanted = at(tester.size) >= at(PLANTED_FIT.from);
  return (["bust", "upper-arm"] as const).map((area) => {
    const off = offBy(area, tester.size, { published: call.pattern, real });
    const expected = area === PLANTED_FIT.area && isPlanted ? -1 : off > FELT ? 1 : off < -FELT ? -1 : 0;
    const scale = random.uniform() < OTHERWISE ? otherwise(expected, random) : expected;
    const words = WORDS[scale];
    const says = random.uniform() < SAYS_SO ? words[random.below(words.length)] : undefined;
    return says === undefined ? { area, scale } : { area, scale, says };
  });
}

/** How far the garments really come out from what is published, in tolerances; the measurement bears the area's id. */
function offBy(id: string, size: string, patterns: { published: PatternDocument; real: PatternDocument }): number {
  const cm = (pattern: PatternDocument) =>
    predict({ pattern, size }).measurements.find(({ measurement }) => measurement === id)?.designCm ?? 0;
  const tolerance = patterns.published.measurements.find((measurement) => measurement.id === id)?.toleranceCm ?? 1;
  return (cm(patterns.real) - cm(patterns.published)) / tolerance;
}

function otherwise(expected: -1 | 0 | 1, random: SeededRandom): FitNote["scale"] {
  const looser = random.below(2) === 0;
  switch (expected) {
    case -1:
      return looser ? 0 : -2;
    case 0:
      return looser ? 1 : -1;
    case 1:
      return looser ? 2 : 0;
  }
}
