import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { publishedCall } from "@/features/recruiting/listing/access";
import { inviteApplicants } from "@/features/recruiting/invitations/mutations";
import { storeApplication } from "@/features/recruiting/applications/mutations";
import { sendOwnLink } from "@/features/recruiting/applications/own/own-link-mutations";
import { tellWithoutSpot } from "@/features/recruiting/places/no-spot-mutations";
import { database } from "@/server/database";
import type { ChangeableKind } from "../../src/features/testing/messages/changeable-kinds";
import { loadEditedMessage } from "../../src/features/testing/messages/message-change-loaders";
import { storeWords, switchMail } from "../../src/features/testing/messages/message-change-mutations";
import { inviteLonger } from "../../src/features/testing/progress/progress-mutations";
import { makeViewer } from "./make-account";
import { startMailServer } from "./mail-server";
import { emptyOutbox, work } from "./outbox-work";
import { makePublishedCall, type PublishedCallMade } from "./published-call";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

emptyOutbox(server);

const LATER = new Date("2091-01-01T00:00:00Z");

async function applied(made: PublishedCallMade, name: string): Promise<string> {
  return await storeApplication(await publishedCall(made.callId), {
    ...{ name, email: `${randomUUID()}@example.org`, measurements: { bust: 97 }, typed: {}, accountId: null },
    document: {
      ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us" },
      ...{ timeZone: "Pacific/Chatham", experience: "first", handle: "", pastWork: "" },
    },
    ...{ agreementVersion: 1, idempotencyKey: randomUUID() },
  });
}

const WORDS = { subject: "Hello [name]", text: "Dear [name], how nice.", note: "I am away on Sunday." };

async function store(access: CallAccess, kind: ChangeableKind, words: Partial<typeof WORDS> = {}) {
  const { original } = await loadEditedMessage(access, kind);
  return await storeWords(access, { kind, version: 0, ...WORDS, ...words, original });
}

it("offers a spot in the designer’s words, filled in, with the answer’s link and the date, and again when it is extended", async () => {
  const made = await makePublishedCall();
  const applicationId = await applied(made, "Maja");
  expect(await store(made.access, "place-offered", { text: "Size [size], [name]?" })).toEqual({});
  await inviteApplicants(made.access, { invitations: [{ applicationId, size: "small" }], expiresAt: LATER });
  const tester = await database().tester.findFirstOrThrow({ where: { callId: made.callId } });
  await inviteLonger(made.access, tester.id, new Date("2091-02-01T00:00:00Z"));
  await work();
  const offers = server.taken.filter(({ subject }) => subject === "Hello Maja");
  expect(offers).toHaveLength(2);
  for (const { text } of offers) {
    expect(text).toContain("Size S, Maja?\n\nI am away on Sunday.\n\n");
    expect(text).toContain("Please answer by");
    expect(text).toContain(`/invited/${tester.id}.`);
  }
});

it("tells applicants that their application is in, and that they have no spot, in the designer’s words", async () => {
  const made = await makePublishedCall();
  expect(await store(made.access, "application-received", { note: "" })).toEqual({});
  expect(await store(made.access, "no-place", { subject: "Sorry, [name]" })).toEqual({});
  await applied(made, "Maja");
  await database().call.update({ where: { id: made.callId }, data: { status: "closed", closedAt: new Date() } });
  expect(await tellWithoutSpot(made.access)).toBe(1);
  await work();
  const [received, none] = server.taken;
  expect(received?.subject).toBe("Hello Maja");
  expect(received?.text).toContain("Dear Maja, how nice.\n\nOn your own page you see");
  expect(received?.text).toContain("/applications/");
  expect(received?.text).toContain("if that was not you");
  expect(none?.subject).toBe("Sorry, Maja");
  expect(none?.text).toContain("I am away on Sunday.");
  const { testers } = await loadEditedMessage(made.access, "no-place");
  expect(testers.map(({ name, values }) => [name, values.size])).toEqual([["Maja", null]]);
});

it("sends an applicant their link again in the designer’s words", async () => {
  const made = await makePublishedCall();
  const applicationId = await applied(made, "Maja");
  await database().message.deleteMany();
  expect(await store(made.access, "application-link", { subject: "Again, [name]" })).toEqual({});
  await sendOwnLink(made.access, applicationId);
  await work();
  expect(server.taken[0]?.subject).toBe("Again, Maja");
  expect(server.taken[0]?.text).toContain("Dear Maja, how nice.\n\nI am away on Sunday.\n\n");
  expect(server.taken[0]?.text).toContain(`/applications/${applicationId}.`);
});

it("refuses what is not known for applicants, and switches off nothing that people need", async () => {
  const made = await makePublishedCall();
  expect(await store(made.access, "application-received", { text: "Size [size]" })).toEqual({
    text: "“[size]” is not known for applicants. Leave it out.",
  });
  for (const kind of ["application-received", "place-offered", "no-place"] as const)
    await expect(switchMail(made.access, { kind, isOff: true })).rejects.toMatchObject({ code: "not-found" });
  await expect(callAccess(await makeViewer("Eva"), made.callId, "editor")).rejects.toMatchObject({
    code: "not-found",
  });
});
