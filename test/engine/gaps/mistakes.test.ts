import { describe, expect, it } from "vitest";
import { plantedCall } from "@/engine/calibration";
import { gaps } from "@/engine/gaps";
import { twoErrors } from "@/engine/gaps/mistakes/two-errors";
import type { CallDocument, Reading } from "@/engine/pattern";
import { crochetedCardigan } from "@/engine/simulation";

function sound(seed: number): CallDocument {
  return plantedCall({
    ...{ pattern: crochetedCardigan(), design: "3 a size" as const, fault: "nothing" as const },
    ...{ entryErrorShare: 0, seed },
  }).call;
}

/** The first tester of the middle size, and their number of tolerances off in the bust. */
function withWrongBust(call: CallDocument, tolerances: number, decision?: Reading["decision"]) {
  const { sizes, measurements } = call.pattern;
  const size = sizes[Math.floor(sizes.length / 2)]?.id ?? "";
  const tester = call.testers.find((found) => found.size === size)?.id ?? "";
  const more = tolerances * (measurements.find(({ id }) => id === "bust")?.toleranceCm ?? 0);
  const testers = call.testers.map((found) => ({
    ...found,
    readings: found.readings.map((reading) =>
      found.id === tester && reading.measurement === "bust"
        ? { ...reading, cm: reading.cm + more, ...(decision === undefined ? {} : { decision }) }
        : reading,
    ),
  }));
  const cellOf = (changed: CallDocument) =>
    gaps(changed).cells.find((cell) => cell.size === size && cell.measurement === "bust");
  return { call: { ...call, testers }, tester, cellOf };
}

describe("a reading that is wrong like no known entry error", () => {
  it("is listed with its chance, moves its cell little, and is the cause of nothing", () => {
    for (const seed of [2, 4, 6]) {
      const before = sound(seed);
      const { call, tester, cellOf } = withWrongBust(before, 4.5);
      const output = gaps(call);
      const suspect = output.suspects.find((found) => found.tester === tester && found.id === "bust");
      expect(suspect?.chance).toBeGreaterThan(0.5);
      expect(suspect?.setAside).toBe(false);
      expect(Math.abs((cellOf(call)?.gapCm ?? 9) - (cellOf(before)?.gapCm ?? 0))).toBeLessThan(0.5);
      expect(output.causes).toEqual([]);
    }
  });

  it("counts whole once a person has decided that it does", () => {
    const before = sound(2);
    const kept = withWrongBust(before, 4.5, "keep");
    const doubted = withWrongBust(before, 4.5);
    expect(gaps(kept.call).suspects.find(({ tester }) => tester === kept.tester)?.chance ?? 0).toBe(0);
    expect(kept.cellOf(kept.call)?.gapCm).toBeGreaterThan(doubted.cellOf(doubted.call)?.gapCm ?? 9);
  });

  it("is not suspected where all testers of the size read the same", () => {
    const before = sound(2);
    const { tester } = withWrongBust(before, 0);
    const size = before.testers.find(({ id }) => id === tester)?.size;
    const testers = before.testers.map((found) => ({
      ...found,
      readings: found.readings.map((reading) =>
        found.size === size && reading.measurement === "bust" ? { ...reading, cm: reading.cm + 9 } : reading,
      ),
    }));
    const output = gaps({ ...before, testers });
    expect(output.cells.find((cell) => cell.size === size && cell.measurement === "bust")?.verdict).toBe("off");
    expect(output.suspects.filter(({ what, chance = 0 }) => what === "reading" && chance >= 0.5)).toEqual([]);
  });
});

describe("a tester whose readings are all wrong", () => {
  it("is told from single mistakes, and moves no cell beyond tolerance", () => {
    const planted = plantedCall({
      ...{ pattern: crochetedCardigan(), design: "3 a size" as const, fault: "nothing" as const },
      ...{ entryErrorShare: 0, trouble: "one tester wholly wrong" as const, seed: 20 },
    });
    const output = gaps(planted.call);
    const wrong = planted.mistakes[0]?.tester;
    const chances = new Map(output.testers.map(({ tester, chance }) => [tester, chance ?? 0]));
    expect(chances.get(wrong ?? "")).toBeGreaterThan(0.5);
    expect([...chances].filter(([tester, chance]) => tester !== wrong && chance > 0.5)).toEqual([]);
    expect(output.cells.filter(({ verdict }) => verdict === "off")).toEqual([]);
  });
});

describe("two errors of which one is far wider", () => {
  const given = { predictedVariance: 0.3, honestVariance: 0.25, wrongVariance: 16.25, prior: 0.02 };

  it("is honest where it is as predicted, and a mistake where it is far off", () => {
    expect(twoErrors({ ...given, missed: 0.2 }).chance).toBeLessThan(0.01);
    expect(twoErrors({ ...given, missed: 4.5 }).chance).toBeGreaterThan(0.99);
  });

  it.each([0, 0.8, 2, 2.6, 3.2, 5])(
    "has the moments of the mixture, integrated by hand, when it misses by %d",
    (missed) => {
      const { predictedVariance, honestVariance, wrongVariance, prior } = given;
      const normal = (x: number, variance: number) =>
        Math.exp(-(x * x) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
      let density = 0;
      let first = 0;
      let wrong = 0;
      const step = 0.001;
      for (let value = -12; value <= 12; value += step) {
        const prediction = normal(value, predictedVariance) * step;
        const honestPart = (1 - prior) * normal(missed - value, honestVariance) * prediction;
        const wrongPart = prior * normal(missed - value, wrongVariance) * prediction;
        density += honestPart + wrongPart;
        wrong += wrongPart;
        first += value * (honestPart + wrongPart);
      }
      const found = twoErrors({ ...given, missed });
      expect(found.chance).toBeCloseTo(wrong / density, 5);
      expect(found.logDensity).toBeCloseTo(Math.log(density), 5);
      const moved = (predictedVariance / (predictedVariance + found.variance)) * missed;
      expect(moved).toBeCloseTo(first / density, 5);
    },
  );
});
