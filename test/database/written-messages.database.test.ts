import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { contentSchema } from "@/features/mail/schema";
import { database } from "@/server/database";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { writeToChosen } from "../../src/features/testing/writing/writing-mutations";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall } from "./invited-tester";

// Before the settings are first read; nothing is sent here.
process.env.SMTP_URL = "smtp://127.0.0.1:9";
process.env.MAIL_FROM = "mail@sizes.example";

let access: CallAccess;

/** What was written to whom, in order. */
async function written() {
  const rows = await database().message.findMany({ where: { kind: "designer-wrote" }, orderBy: { createdAt: "asc" } });
  return rows.map(({ address, content }) => ({ address, says: JSON.stringify(contentSchema.parse(content)) }));
}

/** A tester who has accepted. */
async function accepted(): Promise<string> {
  const testerId = await inviteTo(access);
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  return testerId;
}

beforeEach(async () => {
  access = await makeCall(await makeViewer("Ana"));
  await database().message.deleteMany();
});

describe("a designer’s own message", () => {
  const message = (testerIds: readonly string[], text = "Size [size], [name]?") => ({
    ...{ testerIds: [...testerIds], formKey: randomUUID(), subject: "To [name]", text },
  });

  it("goes to each whom they chose with their own words filled in, once however often it is sent", async () => {
    const testerId = await accepted();
    await accepted();
    const sent = message([testerId]);
    expect(await Promise.all([writeToChosen(access, sent), writeToChosen(access, sent)])).toEqual([{}, {}]);
    const [{ address, says } = { address: "", says: "" }, ...others] = await written();
    expect(others).toEqual([]);
    expect(address).toBe("bea@example.org");
    expect(says).toContain('"subject":"To Bea"');
    expect(says).toContain('"text":"Size S, Bea?"');
    expect(says).toContain(`"before":"/invited/","key":"invitation","id":"${testerId}"`);
  });

  it("is not written while a field of it is unknown or without a value", async () => {
    const testerId = await accepted();
    expect(await writeToChosen(access, message([testerId], "[nmae]"))).toEqual({
      text: expect.stringContaining("Nothing can be filled in for “[nmae]”.") as string,
    });
    expect(await writeToChosen(access, message([testerId], "by [report day]"))).toEqual({
      text: "“[report day]” is not known for Bea. Leave it out or untick them.",
    });
    expect(await written()).toEqual([]);
  });

  it("goes to nobody else’s testers, and from no helper who only looks", async () => {
    const testerId = await accepted();
    const other = await makeCall(await makeViewer("Sam"));
    await writeToChosen(other, message([testerId]));
    const vera = await makeViewer("Vera");
    await database().membership.create({
      data: { patternId: access.pattern.patternId, accountId: vera.accountId, role: "viewer" },
    });
    await writeToChosen(await callAccess(vera, access.callId, "viewer"), message([testerId]));
    expect(await written()).toEqual([]);
  });
});
