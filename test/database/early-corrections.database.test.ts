import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { latestRevision } from "@/features/patterns/data";
import { earlyWords } from "@/features/results/early-correction-copy";
import { earlyCorrections } from "@/features/results/early-corrections-data";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { database } from "@/server/database";
import { patternDocument } from "../factories/pattern";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

let made: TestedCall;

const CELL = {
  ...{ size: "small", measurement: "bust", reports: 4, gapCm: 6, standardErrorCm: 0.5, lowCm: 5, highCm: 7 },
  ...{ chanceOff: 1, verdict: "off", testersToSettle: null },
};
const CAUSE = {
  ...{ kind: "count", id: "width", size: "small", estimate: 6, standardError: 0.5, unit: "stitches", explains: 1 },
  ...{ evidence: 20, rivals: [] },
};

/** An analysis of the call as it is, which found these. */
async function found(cells: readonly object[], causes: readonly object[]): Promise<void> {
  const { callId } = made.call;
  await database().analysis.deleteMany({ where: { callId } });
  await database().analysis.create({
    data: {
      ...{ callId, callVersion: 1, engineVersion: ENGINE_VERSION, revisionId: made.revisionId, status: "done" },
      differences: { cells: cells.map((cell) => ({ ...cell })), causes: causes.map((cause) => ({ ...cause })) },
    },
  });
}

const early = async () => await earlyCorrections(made.call, await latestRevision(made.call.pattern));
const named = async () => (await early()).flatMap(({ names }) => names).length;

beforeEach(async () => {
  made = await makeCall();
  await found([CELL], [CAUSE]);
});

it("prepares a correction from a cause that is certain, for those who have not reached that place", async () => {
  const [ann, bea, carl] = [await makeTester(made), await makeTester(made), await makeTester(made)];
  await makeTester(made, { size: "large" });
  await database().testerContact.create({ data: { testerId: ann.testerId, name: "Ann" } });
  await saveFields(ann, [{ field: "swatch.1.stitches", was: "", becomes: "20" }]);
  await saveFields(bea, [{ field: "worked.width", was: "", becomes: "104" }]);
  await saveFields(carl, [{ field: "reading.bust.1.value", was: "", becomes: "106" }]);
  const [one, ...others] = await early();
  expect(others).toEqual([]);
  expect(one).toEqual({ change: { count: "width", size: "small", was: 104, becomes: 98 }, names: ["Ann"] });
  expect(one && earlyWords(one, patternDocument())).toBe(
    "In size S the text seems to give 104 stitches for “Width”, not 98. Ann has not reached it.",
  );
});

it("names nobody who has stopped, and nothing once a correction of that number is published", async () => {
  const ann = await makeTester(made);
  await makeTester(made);
  await database().tester.update({ where: { id: ann.testerId }, data: { stoppedAt: new Date() } });
  expect(await named()).toBe(1);
  const numbers = [{ count: "width", size: "small", was: 104, becomes: 98 }];
  const sent = { text: "Six too many.", revisionId: made.revisionId, place: null, numbers, sizes: ["small"] };
  await publishCorrection(made.call, { ...sent, idempotencyKey: randomUUID() });
  expect(await early()).toEqual([]);
});

it("says nothing where it is not certain, of another kind, of another size, of an older revision, or another's", async () => {
  await makeTester(made);
  expect(await named()).toBe(1);
  await found([{ ...CELL, verdict: "leaning" }], [CAUSE]);
  expect(await early()).toEqual([]);
  await found([{ ...CELL, measurement: "length" }], [CAUSE]);
  expect(await early()).toEqual([]);
  await found([CELL], [{ ...CAUSE, kind: "from" }]);
  expect(await early()).toEqual([]);
  await found([CELL], [{ ...CAUSE, size: "large" }]);
  expect(await early()).toEqual([]);
  await found([CELL], [CAUSE]);
  const other = await makeCall();
  const forged = { ...other.call, callId: made.call.callId };
  expect(await earlyCorrections(forged, await latestRevision(made.call.pattern))).toEqual([]);
  const { revisionId, document } = await latestRevision(other.call.pattern);
  expect(await earlyCorrections(made.call, { revisionId, document })).toEqual([]);
});
