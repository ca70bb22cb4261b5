import { describe, expect, it } from "vitest";
import { gaps, shownHabits, testerRecord } from "@/engine/gaps";
import { testerHabits } from "@/engine/gaps/earlier/tester-habits";
import { parseCall, type CallDocument, type ShownHabits, type TesterRecord } from "@/engine/pattern";
import { crochetedCardigan, simulateCall, type Person } from "@/engine/simulation";

const PATTERN = crochetedCardigan();
const NOTHING: TesterRecord = {
  tests: 1,
  tape: { logRatio: 0.5, weight: 0 },
  across: { offset: 0.04, weight: 0 },
  along: { offset: 0.04, weight: 0 },
};
const LIKE_OTHERS: Person = { across: 0, along: 0, readingFactor: 1, newShare: 1 };

/** Three testers a size, the first of all with habits of their own. */
function simulated(person: Partial<Person>, seed: number): CallDocument {
  const testers = Object.fromEntries(PATTERN.sizes.map(({ id }) => [id, 3]));
  return simulateCall({
    ...{ pattern: PATTERN, real: PATTERN, testers, people: [{ ...LIKE_OTHERS, ...person }], seed },
    places: Object.fromEntries(PATTERN.sizes.map(({ id }) => [id, { least: 0, wanted: 4 }])),
    habits: {
      ...{ gaugeSpread: 0.05, driftSd: 0.022, readingSd: 0.4, roundCm: 0, missingReadings: 0, missingSwatches: 0 },
      ...{ entryErrorShare: 0, yarnRatio: 4.6 },
    },
  }).call;
}

const FIRST = "tester-1";

function shownOver(person: Partial<Person>, calls: number): TesterRecord {
  const shown = Array.from({ length: calls }, (_, seed) => {
    const found = shownHabits(simulated(person, seed + 1), new Set([FIRST])).get(FIRST);
    if (found === undefined) throw new Error("they reported");
    return found;
  });
  const record = testerRecord(shown);
  if (record === null) throw new Error("there is something to tell");
  return record;
}

describe("a tester's habits", () => {
  it("are shown by their tests: to within three standard errors of what was simulated", () => {
    const record = shownOver({ across: 0.05, along: -0.04, newShare: 0.5 }, 12);
    expect(record.tests).toBe(12);
    expect(Math.abs(record.across.offset - 0.05) * Math.sqrt(record.across.weight)).toBeLessThan(3);
    expect(Math.abs(record.along.offset + 0.04) * Math.sqrt(record.along.weight)).toBeLessThan(3);
    expect(record.across.weight).toBeGreaterThan(12 / 0.022 ** 2 / 4);
  });

  it("show a tape that is held carelessly or well", () => {
    const rough = shownOver({ readingFactor: 2 }, 12).tape;
    const exact = shownOver({ readingFactor: 0.5 }, 12).tape;
    expect(rough.logRatio).toBeGreaterThan(0.3);
    expect(exact.logRatio).toBeLessThan(-0.3);
    const usual = shownOver({}, 12).tape;
    expect(Math.abs(usual.logRatio) * Math.sqrt(usual.weight)).toBeLessThan(3);
  });

  it("are of those who are asked about, alone", () => {
    const call = simulated({}, 3);
    expect([...shownHabits(call, new Set([FIRST, "somebody-else"])).keys()]).toEqual([FIRST]);
  });

  it("are as usual for a record that says nothing", () => {
    const { tapeFactor, across } = testerHabits(NOTHING);
    expect(tapeFactor).toBeCloseTo(1, 12);
    expect(across.offset).toBe(0);
    expect(across.variance).toBeCloseTo(0.022 ** 2 / 2, 12);
  });

  it("of several tests are their means by weight, in any order", () => {
    const shown = (offset: number, weight: number): ShownHabits => ({
      ...{ tape: { logRatio: offset, weight }, across: { offset, weight }, along: { offset, weight: 0 } },
    });
    const record = testerRecord([shown(0.1, 1), shown(0.4, 3)]);
    expect(record?.across).toEqual({ offset: expect.closeTo(0.325, 12) as number, weight: 4 });
    expect(record?.along).toEqual({ offset: 0, weight: 0 });
    expect(testerRecord([shown(0.4, 3), shown(0.1, 1)])).toEqual(record);
    expect(testerRecord([])).toBeNull();
  });
});

describe("a call in which a tester is known", () => {
  const driftOf = (call: CallDocument) => gaps(call).testers.find(({ tester }) => tester === FIRST);

  it("expects of their garment what their earlier ones did", () => {
    const call = simulated({ across: 0.05, newShare: 0.5 }, 40);
    const record = { ...NOTHING, across: { offset: 0.05, weight: 1e7 } };
    const known = driftOf({ ...call, format: "sizewright/call@2", records: { [FIRST]: record } });
    const unknown = driftOf(call);
    expect(Math.abs((known?.driftAcross ?? 0) - 0.05)).toBeLessThan(
      Math.abs((unknown?.driftAcross ?? 0) - 0.05) + 0.01,
    );
  });

  it("lets cells follow a careful tape more than a careless one", () => {
    const call = simulated({}, 41);
    const size = call.testers[0]?.size;
    const moved = (logRatio: number) => {
      const record = { ...NOTHING, tape: { logRatio, weight: 1e4 } };
      const records = { [FIRST]: record };
      const cellOf = (more: number) => {
        const testers = call.testers.map((tester) =>
          tester.id === FIRST
            ? { ...tester, readings: tester.readings.map((reading) => ({ ...reading, cm: reading.cm + more })) }
            : tester,
        );
        const { cells } = gaps({ ...call, format: "sizewright/call@2", testers, records });
        return cells.find((cell) => cell.size === size && cell.measurement === "bust")?.gapCm ?? Number.NaN;
      };
      return Math.abs(cellOf(0.5) - cellOf(0));
    };
    expect(moved(-0.7)).toBeGreaterThan(moved(0.7));
  });

  it("can be read as JSON in call@2 alone", () => {
    const call = { ...simulated({}, 3), records: { [FIRST]: NOTHING } };
    expect(parseCall({ ...call, format: "sizewright/call@2" }).ok).toBe(true);
    expect(parseCall({ ...call, format: "sizewright/call@1" }).ok).toBe(false);
  });
});
