import { describe, expect, it } from "vitest";
import { gaps } from "@/engine/gaps";
import {
  CALL_FORMAT,
  CALL_FORMAT_2,
  callFormatOf,
  parseCall,
  PLAUSIBLE,
  type CallDocument,
  type Reading,
} from "@/engine/pattern";
import { analyseCall } from "@/engine/results";
import { seededRandom, type SeededRandom } from "@/engine/seeded-random";
import { callDocument, reader } from "../../factories/call";

const SEED = Number(process.env.SEED ?? 20_261_129);
const CASES = 20;

function readings(random: SeededRandom): Record<string, number> {
  return { bust: 97 + 8 * random.uniform(), length: 38 + 4 * random.uniform() };
}

/** A call in whose reports one reading is typed wrong, and the number that a person uses for it. */
function randomCase(random: SeededRandom) {
  const testers = ["ann", "bea", "cat", "dot", "eva"].map((id) => reader(id, readings(random)));
  const tester = Math.floor(random.uniform() * testers.length);
  const position = Math.floor(random.uniform() * 2);
  const state: Reading["state"] = random.uniform() < 0.5 ? "unwashed" : "washed";
  const use = position === 0 ? 95 + 10 * random.uniform() : 37 + 6 * random.uniform();
  const typed = use * (random.uniform() < 0.5 ? 0.5 : 10);
  const withReading = (change: Partial<Reading>): CallDocument =>
    callDocument(
      testers.map((given, index) =>
        index === tester
          ? {
              ...given,
              readings: given.readings.map((reading, at) =>
                at === position ? { ...reading, state, ...change } : reading,
              ),
            }
          : given,
      ),
      { format: CALL_FORMAT_2 },
    );
  return { use, typed, withReading };
}

describe("another value in the place of a reading", () => {
  it(`gives the analysis that it would give if it had been typed and checked (seed ${SEED})`, () => {
    const random = seededRandom(SEED);
    for (let run = 0; run < CASES; run += 1) {
      const { use, typed, withReading } = randomCase(random);
      const used = withReading({ cm: typed, decision: { use } });
      const checked = withReading({ cm: use, decision: "keep" });
      expect(gaps(used)).toEqual(gaps(checked));
      const [results, wanted] = [analyseCall(used), analyseCall(checked)];
      const { flagged, testers, ...rest } = results;
      expect({ ...rest, flagged: [], testers: [] }).toEqual({ ...wanted, flagged: [], testers: [] });
      const plain = testers.map((tester) => ({
        ...tester,
        readings: tester.readings.map(({ typedCm: _typed, decision, ...reading }) => ({
          ...reading,
          decision: decision === null ? null : "keep",
        })),
      }));
      expect(plain).toEqual(wanted.testers);
      expect(flagged).toMatchObject([{ decision: { use }, counts: true, value: { cm: typed } }]);
      expect(testers.flatMap((tester) => tester.readings.flatMap(({ typedCm }) => typedCm ?? []))).toEqual([typed]);
    }
  });

  const call = (use: number, format: CallDocument["format"] = CALL_FORMAT_2) =>
    callDocument([reader("ann", {}, { readings: [{ measurement: "bust", cm: 50, decision: { use } }] })], { format });

  it("is read from a call@2, and refused in a call@1 and outside plausible lengths", () => {
    expect(parseCall(call(100))).toMatchObject({ ok: true });
    expect(parseCall(call(100, CALL_FORMAT))).toEqual({
      ok: false,
      faults: [
        {
          path: "testers[0].readings[0].decision",
          says: "can use another value only in “sizewright/call@2”.",
        },
      ],
    });
    for (const cm of [PLAUSIBLE.finishedCm.min / 2, PLAUSIBLE.finishedCm.max * 2])
      expect(parseCall(call(cm))).toMatchObject({
        ok: false,
        faults: [{ path: "testers[0].readings[0].decision.use" }],
      });
    for (const use of [-1, "12", null]) {
      const readings = [{ measurement: "bust", cm: 50, decision: { use } }];
      const testers = call(100).testers.map((tester) => ({ ...tester, readings }));
      expect(parseCall({ ...call(100), testers }).ok).toBe(false);
    }
  });

  it("makes an export call@2; reports without one stay call@1", () => {
    expect(callFormatOf(call(100).testers)).toBe(CALL_FORMAT_2);
    expect(callFormatOf([reader("bea", { bust: 99 })])).toBe(CALL_FORMAT);
  });
});
