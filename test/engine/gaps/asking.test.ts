import { describe, expect, it } from "vitest";
import { plantedCall, type Design } from "@/engine/calibration";
import { NORMAL_NODES } from "@/engine/distributions";
import { gapReadings, gaps, gapSurface, isSettled } from "@/engine/gaps";
import { readingToTake, withLeftOut } from "@/engine/gaps/asking/whole-block";
import { noMistakes } from "@/engine/gaps/mistakes/mistakes";
import { SD_INDEX, START_SDS } from "@/engine/gaps/model/gap-sds";
import { gaugeSpread } from "@/engine/gaps/model/gauge-spread";
import { testerPlaces } from "@/engine/gaps/model/tester-places";
import type { CallDocument, Reading } from "@/engine/pattern";
import { fabricGrowths, indexPattern } from "@/engine/prediction";
import { crochetedCardigan, knittedPullover } from "@/engine/simulation";
import {
  buffersFor,
  gatherInformation,
  jointCells,
  readingsOfBlock,
  solveSurface,
  surfacePosterior,
  variancesOnceLearnt,
} from "@/engine/variance-components";
import { callDocument, reader } from "../../factories/call";

const FEW = "1–2 a size, two sizes empty, 30 % lost";

function drawn(seed: number, design: Design = FEW, pattern = knittedPullover()): CallDocument {
  return plantedCall({ pattern, design, fault: "drawn", entryErrorShare: 0, seed }).call;
}

function present<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error("not there");
  return value;
}

function posteriorOf(call: CallDocument) {
  const { testers, readings } = gapReadings(call);
  const solution = solveSurface(gapSurface(call.pattern, []), gatherInformation(readings, START_SDS), START_SDS);
  if (solution === null) throw new Error("no solution");
  const posterior = surfacePosterior(solution);
  return { testers, readings, groups: posterior.groups, joint: jointCells(solution, posterior) };
}

function withReading(call: CallDocument, id: string, reading: Reading): CallDocument {
  const testers = call.testers.map((tester) =>
    tester.id === id ? { ...tester, readings: [...tester.readings, reading] } : tester,
  );
  return { ...call, testers };
}

function closeTo(values: readonly (readonly number[])[], digits: number): number[][] {
  return values.map((ofSize) => ofSize.map((value) => expect.closeTo(value, digits) as number));
}

describe("a reading that could be taken, at the same standard deviations", () => {
  const call = drawn(5);
  const { testers, readings, groups, joint } = posteriorOf(call);
  const place = present(testerPlaces(testers).find(({ gaps: { gaps: taken } }) => taken.length < 8));
  const { tester } = place.gaps;
  const posterior = present(groups[place.size]);
  const whole = withLeftOut(place, {
    index: indexPattern(call.pattern, fabricGrowths(call)),
    spreads: gaugeSpread(call),
    fit: { mistakes: noMistakes(readings) },
  });
  const foretold = (row: number, from = whole) => {
    const toTake = readingsOfBlock({
      ...{ block: from.block, residualSd: SD_INDEX.residual, sds: START_SDS, posterior },
      buffers: buffersFor([from.block]),
    });
    const toLearn = { group: place.size, ...toTake(readingToTake(from, row, START_SDS)) };
    const variancesOf = variancesOnceLearnt(joint, toLearn);
    return groups.map((_, group) => variancesOf(group));
  };
  const found = (reading: Reading) => {
    const after = posteriorOf(withReading(call, tester.id, reading)).groups;
    return after.map(({ mean, covariance }) =>
      [...mean].map((_, cell) => covariance[cell * mean.length + cell] ?? Number.NaN),
    );
  };
  const idOf = (row: number) => present(call.pattern.measurements[present(whole.gaps[row]).measurement]).id;

  it("makes the cells of all sizes as sure as they are once a measurement is taken again", () => {
    const again = { ...present(tester.readings.find(({ measurement }) => measurement === idOf(0))), cm: 61 };
    expect(foretold(0).map((variances) => [...variances])).toEqual(closeTo(found(again), 8));
  });

  it("teaches more where the first reading may be a mistake", () => {
    const knownVariances = whole.block.knownVariances.map((variance, row) => (row === 0 ? variance + 4 : variance));
    const doubted = { ...whole, block: { ...whole.block, knownVariances } };
    const { measurement } = present(whole.gaps[0]);
    expect(foretold(0, doubted)[place.size]?.[measurement]).toBeLessThan(foretold(0)[place.size]?.[measurement] ?? 0);
  });

  it("makes the cells as sure as they are once a measurement that was left out is taken", () => {
    const row = place.gaps.gaps.length;
    const first = { measurement: idOf(row), cm: 44, state: "washed" } as const;
    expect(foretold(row).map((variances) => [...variances])).toEqual(closeTo(found(first), 3));
  });
});

describe("what to ask next", { timeout: 120_000 }, () => {
  it("names the few most useful first, each measurement of a size once, with whom or where to ask", () => {
    const { askNext, cells } = gaps(drawn(8));
    expect(askNext.length).toBeGreaterThan(2);
    expect(askNext.length).toBeLessThanOrEqual(8);
    const settles = askNext.map((question) => question.settles);
    expect(settles).toEqual(settles.toSorted((left, right) => right - left));
    expect(Math.min(...settles)).toBeGreaterThan(0);
    const open = cells.filter(({ verdict }) => !isSettled(verdict));
    for (const { action, tester, measurement, size } of askNext) {
      if (action === "input") continue;
      expect(open.some((cell) => cell.size === size)).toBe(true);
      if (action === "tester") continue;
      expect(tester).toBeDefined();
      expect(open.some((cell) => cell.size === size && cell.measurement === measurement)).toBe(true);
    }
    const places = askNext.map(({ action, measurement = "", size = "", input }) =>
      action === "input" ? present(input).id : `${measurement} ${size}`,
    );
    expect(new Set(places).size).toBe(places.length);
  });

  it("asks for what was left out as “measure”, and for what was taken as “measure-again”", () => {
    const asked = [5711, 7711].flatMap((seed) => {
      const call = drawn(seed, "2–4 a size", crochetedCardigan());
      const taken = new Set(
        call.testers.flatMap(({ id, readings }) => readings.map((one) => `${id} ${one.measurement}`)),
      );
      return gaps(call).askNext.flatMap(({ action, tester = "", measurement = "" }) =>
        action.startsWith("measure") ? [{ action, isTaken: taken.has(`${tester} ${measurement}`) }] : [],
      );
    });
    expect(new Set(asked.map(({ action }) => action)).size).toBe(2);
    for (const { action, isTaken } of asked) expect(isTaken).toBe(action === "measure-again");
  });

  it("asks nothing where everything is settled, and for testers alone where nobody has reported", () => {
    const sure = callDocument(Array.from({ length: 12 }, (_, index) => reader(`t${index}`, { bust: 100, length: 40 })));
    expect(gaps(sure).askNext.filter(({ size }) => size === "small")).toEqual([]);
    expect(new Set(gaps(callDocument([])).askNext.map(({ action }) => action)).size).toBeLessThanOrEqual(1);
  });

  it("asks for an edging itself where it may be the cause", () => {
    const call = drawn(7711, "2–4 a size", crochetedCardigan());
    const question = present(gaps(call).askNext.find(({ action }) => action === "input"));
    expect(call.pattern.allowances.map(({ id }) => id)).toContain(question.input?.id);
    expect(question.input?.kind).toBe("allowance");
  });
});

describe("the nodes for a mean over a normal distribution", () => {
  it.each([0, 1, 2, 3, 4, 6, 8, 10, 12, 13])("give its moment of order %i", (order) => {
    const moment = NORMAL_NODES.reduce((sum, { node, share }) => sum + share * node ** order, 0);
    const odd = Array.from({ length: order / 2 }, (_, index) => 2 * index + 1);
    const exact = order % 2 === 1 ? 0 : odd.reduce((product, factor) => product * factor, 1);
    expect(moment / Math.max(1, exact)).toBeCloseTo(exact / Math.max(1, exact), 9);
  });
});
