import { describe, expect, it } from "vitest";
import { plantedCall, type Design } from "@/engine/calibration";
import { gapReadings, gapSurface, gaps, type Carrier } from "@/engine/gaps";
import { START_SDS, SD_INDEX } from "@/engine/gaps/model/gap-sds";
import type { CallDocument } from "@/engine/pattern";
import { knittedPullover } from "@/engine/simulation";
import {
  blockInAll,
  buffersFor,
  gatherInformation,
  solveSurface,
  surfacePosterior,
  withoutBlock,
  withoutReading,
  type Readings,
} from "@/engine/variance-components";

const FEW = "1–2 a size, two sizes empty, 30 % lost";

function drawn(seed: number, design: Design = "2–4 a size"): CallDocument {
  return plantedCall({
    ...{ pattern: knittedPullover(), design, fault: "drawn" as const },
    ...{ entryErrorShare: 0, seed },
  }).call;
}

function present<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error("not there");
  return value;
}

describe("leaving one tester or reading out at the same standard deviations", () => {
  const call = drawn(5);
  const { readings } = gapReadings(call);
  const posteriorOf = (given: Readings) => {
    const solution = solveSurface(gapSurface(call.pattern, []), gatherInformation(given, START_SDS), START_SDS);
    if (solution === null) throw new Error("no solution");
    return { posterior: surfacePosterior(solution).groups, logLikelihood: solution.logLikelihood };
  };
  const whole = posteriorOf(readings);
  const block = present(readings.groups[1]?.blocks[0]);
  const posterior = present(whole.posterior[1]);
  const inAll = blockInAll({
    ...{ block, residualSd: SD_INDEX.residual, sds: START_SDS, posterior },
    buffers: buffersFor([block]),
  });
  const withFirstBlock = (change: (given: typeof block) => (typeof block)[]) => ({
    ...readings,
    groups: readings.groups.map((group, index) =>
      index === 1 ? { ...group, blocks: [...change(block), ...group.blocks.slice(1)] } : group,
    ),
  });
  const variances = ({ mean, covariance }: typeof posterior) =>
    mean.map((_, cell) => covariance[cell * mean.length + cell] ?? 0);

  it("gives what a solution without the tester gives", () => {
    const left = withoutBlock(inAll, posterior);
    const solved = posteriorOf(withFirstBlock(() => []));
    expect([...(left?.mean ?? [])]).toEqual(
      [...(solved.posterior[1]?.mean ?? [])].map((value) => expect.closeTo(value, 8) as number),
    );
    const expected = solved.posterior[1] ? variances(solved.posterior[1]) : [];
    expect([...(left?.variances ?? [])]).toEqual([...expected].map((value) => expect.closeTo(value, 8) as number));
    expect(left?.logDensity).toBeCloseTo(whole.logLikelihood - solved.logLikelihood, 7);
  });

  it("gives what a solution without one reading gives", () => {
    const row = 2;
    const without = <Values extends Float64Array | Int32Array>(values: Values) =>
      values.filter((_, index) => index !== row) as Values;
    const solved = posteriorOf(
      withFirstBlock((given) => [
        {
          ...given,
          values: without(given.values),
          cells: without(given.cells),
          knownVariances: without(given.knownVariances),
          residualShares: without(given.residualShares),
          effects: given.effects.map((effect) => ({ ...effect, weights: without(effect.weights) })),
        },
      ]),
    );
    const left = withoutReading(inAll, posterior, row);
    expect([...left.mean]).toEqual(
      [...(solved.posterior[1]?.mean ?? [])].map((value) => expect.closeTo(value, 8) as number),
    );
    expect(left.logDensity).toBeCloseTo(whole.logLikelihood - solved.logLikelihood, 7);
  });
});

describe("on whom a finding rests", { timeout: 120_000 }, () => {
  const without = (call: CallDocument, { tester, measurement }: Carrier): CallDocument => ({
    ...call,
    testers: call.testers.flatMap((found) => {
      if (found.id !== tester) return [found];
      if (measurement === null) return [];
      return [{ ...found, readings: found.readings.filter((reading) => reading.measurement !== measurement) }];
    }),
  });

  it("is, in nearly every case, whoever makes it go when all is fitted again without them", () => {
    let named = 0;
    let right = 0;
    for (let seed = 1; seed <= 10; seed += 1) {
      const call = drawn(seed, FEW);
      for (const cell of gaps(call).cells)
        for (const carrier of cell.restsOn ?? []) {
          named += 1;
          const after = gaps(without(call, carrier)).cells.find(
            ({ size, measurement }) => size === cell.size && measurement === cell.measurement,
          );
          if (after?.verdict !== "off" && after?.verdict !== "leaning") right += 1;
        }
    }
    expect(named).toBeGreaterThan(20);
    expect(right / named).toBeGreaterThan(0.9);
  });

  it("is nobody where four agree", () => {
    const call = drawn(5);
    const size = call.pattern.sizes[0]?.id;
    const shifted = (testers: CallDocument["testers"]) => ({
      ...call,
      testers: testers.map((tester) => ({
        ...tester,
        readings: tester.readings.map((reading) =>
          tester.size === size && reading.measurement === "length" ? { ...reading, cm: reading.cm + 12 } : reading,
        ),
      })),
    });
    const cellOf = (given: CallDocument) =>
      gaps(given).cells.find((cell) => cell.size === size && cell.measurement === "length");
    const [first] = call.testers.filter((tester) => tester.size === size);
    const four = [1, 2, 3, 4].map((which) => ({ ...first, id: `more-${which}` })) as unknown as CallDocument["testers"];
    const others = call.testers.filter((tester) => tester.size !== size);
    expect(cellOf(shifted([...others, ...four]))).toMatchObject({ verdict: "off", restsOn: [] });
  });
});
