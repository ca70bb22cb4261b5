import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { callAccess, type CallAccess } from "../../src/features/calls/access";
import { callStanding } from "../../src/features/calls/standing-data";
import { patternAccess, type PatternAccess } from "../../src/features/patterns/access";
import { createPattern } from "../../src/features/patterns/mutations";
import { lastNotice } from "../../src/features/recruiting/listing/data";
import { publishListing, startCall } from "../../src/features/recruiting/listing/mutations";
import type { TypedListing } from "../../src/features/recruiting/listing/schema";
import { database } from "../../src/server/database";
import { patternDocument } from "../factories/pattern";
import { makeAccount } from "./make-account";
import { typed, whole } from "./typed-listing";

let pattern: PatternAccess;
let access: CallAccess;

beforeEach(async () => {
  const { id, email } = await makeAccount();
  const owner = { accountId: id, name: "Invented Designer", email, unit: "cm" } as const;
  const { patternId } = await createPattern(owner, { document: patternDocument(), reason: "First" });
  pattern = await patternAccess(owner, patternId, "owner");
  const { callId } = await startCall(pattern, { title: "Vest test", typed: typed(), idempotencyKey: randomUUID() });
  access = await callAccess(owner, callId, "owner");
});

async function publish(version: number, change: TypedListing = {}) {
  return await publishListing(access, { version, listing: whole(change) });
}

it("may shorten for how long data of people is stored who take part, but not make it longer", async () => {
  await publish(1);
  expect(await publish(2, { noticeMonthsStored: "24" })).toMatchObject({ status: "saved" });
  await database().tester.create({ data: { callId: access.callId, code: "T1", position: 0, size: "small" } });
  expect(await publish(3, { noticeMonthsStored: "25" })).toMatchObject({
    status: "refused",
    faults: [{ field: "noticeMonthsStored" }],
  });
  expect(await publish(3, { noticeMonthsStored: "6" })).toMatchObject({ status: "saved" });
});

it("is asked for where the call was published before there were notices, and begins as the owner's last one", async () => {
  expect(await lastNotice(pattern)).toBeNull();
  await publish(1);
  expect(await callStanding(access)).toMatchObject({ isNoticeMissing: false });
  expect(await lastNotice(pattern)).toMatchObject({ responsible: "Invented Designs", monthsStored: 12 });
  await database()
    .$executeRaw`UPDATE listing SET document = document - 'notice' WHERE call_id = ${access.callId}::uuid`;
  expect(await callStanding(access)).toMatchObject({ isNoticeMissing: true });
  expect(await lastNotice(pattern)).toBeNull();
});
