import fc from "fast-check";
import type { PatternDocument } from "@/engine/pattern";
import { patternDocument } from "../../factories/pattern";

/** Every count is tried from 0 to this. */
export const MOST = 11;

export interface Small {
  readonly counts: readonly {
    readonly repeat: { of: number; plus: number } | null;
    readonly least: number;
    readonly mayShrink: boolean;
    readonly locked: number | null;
  }[];
  /** By measurement: times of each count, and what it should come to in each size, in stitches. */
  readonly targets: readonly { readonly times: readonly number[]; readonly stitches: readonly number[] }[];
  readonly tie: { readonly per: number; readonly times: number; readonly within: number } | null;
  readonly slack: number;
}

/** Patterns of these numbers of counts and sizes; at most four numbers, each from 0 to 11, can be searched whole. */
export const smallPatterns = (...shapes: readonly (readonly [counts: number, sizes: number])[]) =>
  fc.constantFrom(...shapes).chain(([counts, sizes]) =>
    fc.record<Small>({
      counts: fc.array(
        fc.record({
          repeat: fc.option(fc.record({ of: fc.integer({ min: 1, max: 4 }), plus: fc.nat(3) })),
          least: fc.nat(3),
          mayShrink: fc.boolean(),
          locked: fc.oneof(
            { weight: 9, arbitrary: fc.constant(null) },
            { weight: 1, arbitrary: fc.integer({ min: 1, max: 8 }) },
          ),
        }),
        { minLength: counts, maxLength: counts },
      ),
      targets: fc.array(
        fc.record({
          times: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: counts, maxLength: counts }),
          stitches: fc.array(
            fc.integer({ min: 4, max: 28 }).map((quarters) => quarters / 4),
            {
              minLength: sizes,
              maxLength: sizes,
            },
          ),
        }),
        { minLength: 1, maxLength: 2 },
      ),
      tie:
        counts < 2
          ? fc.constant(null)
          : fc.option(
              fc.record({
                per: fc.integer({ min: 1, max: 2 }),
                times: fc.integer({ min: 1, max: 2 }),
                within: fc.nat(1),
              }),
            ),
      slack: fc.constantFrom(0, 0.25),
    }),
  );

/** At 10 stitches to 10 cm, so that a stitch is a centimetre; the tolerance is one and a half. */
const TOLERANCE = 1.5;

export function documentOf({ counts, targets, tie }: Small): PatternDocument {
  const sizes =
    targets[0]?.stitches.map((_, index) => ({ id: `s${index}`, label: `S${index}`, body: { bust: 80 + index } })) ?? [];
  return patternDocument({
    fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 10, rows: 10 } }],
    sizes,
    counts: counts.map(({ repeat, least, mayShrink, locked }, index) => ({
      id: `c${index}`,
      label: `C${index}`,
      fabric: "main",
      direction: "stitches",
      least,
      mayShrink,
      ...(repeat ? { repeat } : {}),
      ...(locked === null ? {} : { locked: { s0: locked } }),
    })),
    ties: tie ? [{ count: "c0", per: tie.per, within: tie.within, equals: [{ times: tie.times, count: "c1" }] }] : [],
    measurements: targets.map(({ times, stitches }, index) => ({
      id: `m${index}`,
      letter: "M",
      label: "M",
      how: "Across.",
      toleranceCm: TOLERANCE,
      terms: times.map((many, which) => ({ times: many, count: `c${which}` })),
      target: { cm: Object.fromEntries(stitches.map((cm, size) => [`s${size}`, cm])) },
    })),
    grading: undefined,
  });
}

export type Objective = readonly [beyond: number, deviation: number, unevenness: number, sum: number];

/** Tries all gradings up to the most that keep the rules, by the words of the method and by nothing of the engine's. */
export function tryAll(small: Small, visit: (objective: Objective) => void): void {
  const sizes = small.targets[0]?.stitches.length ?? 0;
  const allowed = small.counts.flatMap((_, count) =>
    Array.from({ length: sizes }, (_unused, size) => allowedNumbers(small, count, size)),
  );
  if (allowed.some((numbers) => numbers.length === 0)) return;
  const chosen = new Array<number>(allowed.length).fill(0);
  for (;;) {
    const values = chosen.map((which, index) => allowed[index]?.[which] ?? Number.NaN);
    if (keepsOrderAndTie(small, values, sizes)) visit(objectiveOf(small, values, sizes));
    let position = 0;
    while (position < chosen.length && chosen[position] === (allowed[position]?.length ?? 0) - 1)
      chosen[position++] = 0;
    if (position === chosen.length) return;
    chosen[position] = (chosen[position] ?? 0) + 1;
  }
}

function allowedNumbers({ counts }: Small, count: number, size: number): number[] {
  const { repeat = null, least = 1, locked = null } = counts[count] ?? {};
  return Array.from({ length: MOST + 1 }, (_, number) => number).filter(
    (number) =>
      number >= least &&
      (size > 0 || locked === null || number === locked) &&
      (repeat === null || (number >= repeat.plus && (number - repeat.plus) % repeat.of === 0)),
  );
}

function keepsOrderAndTie({ counts, tie }: Small, values: readonly number[], sizes: number): boolean {
  const value = (count: number, size: number) => values[count * sizes + size] ?? Number.NaN;
  for (let size = 0; size < sizes; size += 1) {
    for (let index = 0; index < counts.length; index += 1)
      if (size > 0 && counts[index]?.mayShrink === false && value(index, size) < value(index, size - 1)) return false;
    if (tie && Math.abs(tie.per * value(0, size) - tie.times * value(1, size)) > tie.within) return false;
  }
  return true;
}

function objectiveOf({ counts, targets, slack }: Small, values: readonly number[], sizes: number): Objective {
  let beyond = 0;
  let deviation = 0;
  for (const { times, stitches } of targets) {
    for (let size = 0; size < sizes; size += 1) {
      const made = times.reduce((sum, many, count) => sum + many * (values[count * sizes + size] ?? 0), 0);
      const off = Math.abs(made - (stitches[size] ?? 0)) / TOLERANCE;
      beyond += Math.max(0, off - 1);
      deviation += Math.max(0, off - slack);
    }
  }
  let unevenness = 0;
  for (const count of counts.keys()) {
    for (let size = 2; size < sizes; size += 1) {
      const index = count * sizes + size;
      unevenness += Math.abs((values[index] ?? 0) - 2 * (values[index - 1] ?? 0) + (values[index - 2] ?? 0));
    }
  }
  return [beyond, deviation, unevenness, values.reduce((sum, value) => sum + value, 0)];
}
