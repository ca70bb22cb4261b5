import type { CallDocument, PatternDocument, Tester } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import { seededRandom, type SeededRandom } from "@/engine/seeded-random";

type FitNote = NonNullable<Tester["fit"]>[number];

/** What is wrong with the ease and not with the counts: from here up the bust feels tight. The README tells it. */
export const PLANTED_FIT = { area: "bust", feels: "tight", from: "size-3x" } as const;

/** A seed of its own, so that the call's other numbers do not depend on what is said of the fit. */
const SEED = 20261129;
const SAYS_SO = 0.4;
/** A twentieth of the body more or less is felt as a step of the scale. */
const STEP_SHARE = 0.05;
/** How far answers of the same ease lie apart, in steps. */
const SPREAD = 0.4;
/** How far a tester's body is from their size's, relative. */
const BODY_SPREAD = 0.015;

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

/** The call with the bodies of its invented testers, and what they say of the fit at bust and upper arm. */
export function withFit(call: CallDocument, real: PatternDocument): CallDocument {
  const random = seededRandom(SEED);
  return { ...call, testers: call.testers.map((tester) => fittedTester(tester, { call, real, random })) };
}

interface FitChoices {
  readonly call: CallDocument;
  readonly real: PatternDocument;
  readonly random: SeededRandom;
}

function fittedTester(tester: Tester, { call: { pattern }, real, random }: FitChoices): Tester {
  const at = (id: string) => pattern.sizes.findIndex((size) => size.id === id);
  const body: Record<string, number> = {};
  const fit = (["bust", "upper-arm"] as const).map((area): FitNote => {
    const sizeCm = pattern.sizes[at(tester.size)]?.body[area] ?? 0;
    const bodyCm = Math.round(2 * sizeCm * (1 + BODY_SPREAD * random.normal())) / 2;
    body[area] = bodyCm;
    const easeCm = garmentCm(area, tester, real) - bodyCm - (plannedCm(area, tester.size, pattern) - sizeCm);
    const planted = area === PLANTED_FIT.area && at(tester.size) >= at(PLANTED_FIT.from) ? -1 : 0;
    const scale = nearestStep(easeCm / (STEP_SHARE * sizeCm) + planted + SPREAD * random.normal());
    const words = WORDS[scale];
    const says = random.uniform() < SAYS_SO ? words[random.below(words.length)] : undefined;
    return says === undefined ? { area, scale } : { area, scale, says };
  });
  return { ...tester, body, fit };
}

/** The garment as it really came out at the tester's gauge, with the real counts and without drift; the measurement bears the area's id. */
function garmentCm(area: string, tester: Tester, real: PatternDocument): number {
  const predicted = predict({
    pattern: real,
    size: tester.size,
    tester: { ...tester, worked: undefined },
  }).measurements.find(({ measurement }) => measurement === area);
  return predicted?.predictedCm ?? 0;
}

function plannedCm(area: string, size: string, pattern: PatternDocument): number {
  return predict({ pattern, size }).measurements.find(({ measurement }) => measurement === area)?.designCm ?? 0;
}

function nearestStep(felt: number): FitNote["scale"] {
  const steps = [-2, -1, 0, 1, 2] as const;
  return steps.reduce<FitNote["scale"]>(
    (nearest, step) => (Math.abs(step - felt) < Math.abs(nearest - felt) ? step : nearest),
    0,
  );
}
