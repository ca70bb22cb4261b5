import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { CALL_FORMAT, type CallDocument } from "../../src/engine/pattern";
import { createPattern } from "../../src/features/patterns/mutations";
import { storeCall, storePattern } from "../../src/features/testing/report/document-mutations";
import { database } from "../../src/server/database";
import { idempotencyKey } from "../../src/server/idempotency-key";
import type { Viewer } from "../../src/server/viewer";
import { patternDocument, tester } from "../factories/pattern";
import { makeViewer } from "./make-account";

function patternsOf({ accountId }: Viewer): Promise<number> {
  return database().pattern.count({ where: { memberships: { some: { accountId } } } });
}

const BEGUN = { document: patternDocument(), reason: "Begun" };

it("makes one pattern of a form that is sent twice, and two of two forms", async () => {
  const viewer = await makeViewer();
  const [once, other] = [randomUUID(), randomUUID()];
  const first = await createPattern(viewer, { ...BEGUN, idempotencyKey: once });
  const again = await createPattern(viewer, { ...BEGUN, idempotencyKey: once });
  expect(again).toEqual({ ...first, isNew: false });
  expect(first.isNew).toBe(true);
  await createPattern(viewer, { ...BEGUN, idempotencyKey: other });
  expect(await patternsOf(viewer)).toBe(2);
});

it("makes one pattern of sendings that come at the same moment", async () => {
  const viewer = await makeViewer();
  const key = randomUUID();
  const made = await Promise.all(
    Array.from({ length: 6 }, () => createPattern(viewer, { ...BEGUN, idempotencyKey: key })),
  );
  expect(new Set(made.map(({ patternId }) => patternId)).size).toBe(1);
  expect(made.filter(({ isNew }) => isNew)).toHaveLength(1);
  expect(await patternsOf(viewer)).toBe(1);
});

it("makes a pattern each time where nothing was sent with a key", async () => {
  const viewer = await makeViewer();
  await createPattern(viewer, BEGUN);
  await createPattern(viewer, BEGUN);
  expect(await patternsOf(viewer)).toBe(2);
});

it("shows nobody a pattern for knowing the key it was made with", async () => {
  const [owner, other] = [await makeViewer(), await makeViewer()];
  const key = randomUUID();
  await createPattern(owner, { ...BEGUN, idempotencyKey: key });
  await expect(createPattern(other, { ...BEGUN, idempotencyKey: key })).rejects.toMatchObject({ code: "not-found" });
  expect(await patternsOf(other)).toBe(0);
});

it("brings a document in once, with its call and its reports, however often it is sent", async () => {
  const viewer = await makeViewer();
  const places = { small: { least: 1, wanted: 2 }, large: { least: 1, wanted: 2 } };
  const testers = [tester(), tester({ id: "tester-2", size: "large" })];
  const call: CallDocument = { format: CALL_FORMAT, pattern: patternDocument(), places, testers };
  const sent = { call, title: "A call", idempotencyKey: randomUUID() };
  const [first, same, later] = [
    ...(await Promise.all([storeCall(viewer, sent), storeCall(viewer, sent)])),
    await storeCall(viewer, sent),
  ];
  expect(same).toEqual(first);
  expect(later).toEqual(first);
  expect(await database().tester.count({ where: { callId: first?.callId ?? "" } })).toBe(2);
  expect(await patternsOf(viewer)).toBe(1);
  const document = { document: patternDocument(), idempotencyKey: randomUUID() };
  const { patternId } = await storePattern(viewer, document);
  expect(await storePattern(viewer, document)).toMatchObject({ patternId });
  expect(await patternsOf(viewer)).toBe(2);
});

it("has one key for the same content of a form, and another for other content or another form", () => {
  const [form, other] = [randomUUID(), randomUUID()];
  expect(idempotencyKey(form, "a")).toBe(idempotencyKey(form, "a"));
  expect(idempotencyKey(form, "a")).not.toBe(idempotencyKey(form, "b"));
  expect(idempotencyKey(form, "a")).not.toBe(idempotencyKey(other, "a"));
  expect(idempotencyKey(form, "a")).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-8[0-9a-f]{3}-[0-9a-f]{12}$/);
});
