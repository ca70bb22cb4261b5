import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { purgeMessages } from "@/features/mail/purge-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { mailOwnLinks } from "@/features/testing/lost-links/lost-link-mutations";
import { database } from "@/server/database";
import { startMailServer } from "./mail-server";
import { emptyOutbox, work } from "./outbox-work";
import { makeTester } from "./make-tester";
import { makePublishedCall } from "./published-call";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const { takenAddresses } = emptyOutbox(server);
const DAY_MS = 24 * 60 * 60_000;
let address: string;

beforeEach(() => {
  address = `${randomUUID()}@example.org`;
});

async function testerWith(email: string): Promise<TesterAccess> {
  const made = await makePublishedCall();
  const revision = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  const tester = await makeTester({ designer: made.owner, call: made.access, revisionId: revision.id });
  await database().testerContact.create({ data: { testerId: tester.testerId, name: "Bea", email } });
  return tester;
}

it("come in one message to the address that the tests have, and to nobody else", async () => {
  const [first, second] = [await testerWith(address), await testerWith(address.toUpperCase())];
  await mailOwnLinks(`${randomUUID()}@example.org`);
  await mailOwnLinks(address);
  await work();
  expect(takenAddresses()).toEqual([address]);
  for (const { testerId } of [first, second]) expect(server.taken[0]?.text).toContain(`/invited/${testerId}.`);
});

it("are made when the message is sent: the row opens nothing", async () => {
  const { testerId } = await testerWith(address);
  await mailOwnLinks(address);
  const row = await database().message.findFirstOrThrow({ where: { address } });
  expect(JSON.stringify(row.content)).toContain(testerId);
  expect(JSON.stringify(row.content)).not.toContain(`${testerId}.`);
});

it("go with any person of that address, and after 14 days with the address", async () => {
  const tester = await testerWith(address);
  await mailOwnLinks(address);
  await forgetTester(tester);
  expect(await database().message.count({ where: { address } })).toBe(0);
  await testerWith(address);
  await mailOwnLinks(address);
  await work();
  await purgeMessages(new Date(Date.now() + 15 * DAY_MS));
  expect(await database().message.count({ where: { address } })).toBe(0);
});
