import type { Gauge, Swatch, Tester } from "../pattern";
import type { SeededRandom } from "../seeded-random";
import { readSwatch } from "./read-swatch";

export interface BlockingHabits {
  /** How fabrics grow along the rows when they are blocked; not at all when left out. */
  readonly growth?: {
    readonly factor: number;
    /** Relative sd of testers' growths about the factor. */
    readonly spread: number;
    /** Share of testers who count their swatches before, too. */
    readonly countedBefore: number;
  };
  /** Garments that are blocked otherwise than their swatches; none when left out. */
  readonly blockedOtherwise?: {
    readonly share: number;
    /** Relative sd of the difference that this makes to the garment's gauge, in each fabric and direction. */
    readonly spread: number;
  };
}

interface SwatchedTester {
  readonly gauges: ReadonlyMap<string, Gauge>;
  readonly swatches: readonly Swatch[];
}

/** A tester's swatches as they tell them, and the fabrics of their garment as they are. */
export interface BlockedGarment extends SwatchedTester {
  /** Along the rows, by fabric. */
  readonly growths: ReadonlyMap<string, number>;
  readonly told: Pick<Tester, "blocking">;
}

/** Blocks a simulated tester's swatches and garment; nothing is drawn where their habits say nothing of it. */
export function drawBlocking(
  { growth, blockedOtherwise }: BlockingHabits,
  { gauges, swatches }: SwatchedTester,
  random: SeededRandom,
): BlockedGarment {
  const growths = new Map<string, number>();
  if (growth !== undefined) {
    for (const fabric of gauges.keys()) growths.set(fabric, growth.factor * Math.exp(growth.spread * random.normal()));
  }
  const hasCounted = growth !== undefined && random.uniform() < growth.countedBefore;
  const counted = hasCounted ? swatches.map((swatch) => withBefore(swatch, { gauges, growths })) : swatches;
  if (blockedOtherwise === undefined) return { gauges, swatches: counted, growths, told: {} };
  const blocked = counted.map((swatch) => ({ ...swatch, blocking: "wet" as const }));
  if (random.uniform() >= blockedOtherwise.share)
    return { gauges, swatches: blocked, growths, told: { blocking: "wet" } };
  const changed = new Map(
    [...gauges].map(([fabric, gauge]) => [fabric, changedGauge(gauge, blockedOtherwise.spread, random)]),
  );
  return { gauges: changed, swatches: blocked, growths, told: { blocking: "steamed" } };
}

function withBefore(
  swatch: Swatch,
  { gauges, growths }: { gauges: ReadonlyMap<string, Gauge>; growths: ReadonlyMap<string, number> },
): Swatch {
  const gauge = gauges.get(swatch.fabric);
  if (gauge === undefined) return swatch;
  const rowsPerCm = gauge.rowsPerCm * (growths.get(swatch.fabric) ?? 1);
  return { ...swatch, before: readSwatch({ ...gauge, rowsPerCm }) };
}

function changedGauge({ stitchesPerCm, rowsPerCm }: Gauge, spread: number, random: SeededRandom): Gauge {
  return {
    stitchesPerCm: stitchesPerCm * Math.exp(spread * random.normal()),
    rowsPerCm: rowsPerCm * Math.exp(spread * random.normal()),
  };
}
