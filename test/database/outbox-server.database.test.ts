import { setTimeout as pause } from "node:timers/promises";
import { describe, expect, it, vi } from "vitest";
import { sendAgain } from "@/features/mail/mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import { refusal, startMailServer } from "./mail-server";
import { emptyOutbox, work, write } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const SECOND_MS = 1_000;
const HOUR_MS = 60 * 60 * SECOND_MS;

/** Lets time pass until nothing waits, an hour at a time. */
async function workForDays(days: number): Promise<void> {
  for (let hours = 0; hours < days * 24; hours += 1) {
    await work();
    vi.setSystemTime(Date.now() + HOUR_MS);
  }
}

const { takenAddresses } = emptyOutbox(server);

describe("a mail server", () => {
  const three = ["a@example.org", "b@example.org", "c@example.org"];

  it("that is away for an hour gets everything once it is back, once", async () => {
    await server.stop();
    await write(three);
    for (let minutes = 0; minutes < 60; minutes += 5) {
      await work();
      vi.setSystemTime(Date.now() + 300 * SECOND_MS);
    }
    expect(
      await database().message.count({ where: { dueAt: { not: null }, reply: { contains: "ECONNREFUSED" } } }),
    ).toBe(3);
    await server.start();
    await workForDays(1);
    expect(takenAddresses()).toEqual(three);
    expect(await database().message.count({ where: { sentAt: { not: null } } })).toBe(3);
  });

  it("that is away is asked by one message at a time", async () => {
    await server.stop();
    await write(three);
    expect(await work()).toBe(1);
    await server.start();
    vi.setSystemTime(Date.now() + 10 * SECOND_MS);
    await work();
    vi.setSystemTime(Date.now() + HOUR_MS);
    await work();
    expect(takenAddresses()).toEqual(three);
  });

  it("that is slow gets each message once, though two workers look at the same time", async () => {
    server.behaviour = { text: async () => await pause(300).then(() => null) };
    await write(three);
    await Promise.all([work(), work(), work()]);
    expect(takenAddresses()).toEqual(three);
  });

  it("that refuses one recipient gets the others’ mail, and nothing more for that one", async () => {
    server.behaviour = {
      recipient: (address) => (address === "b@example.org" ? refusal(550, "5.1.1 No such user here") : null),
    };
    await write(three);
    await work();
    expect(takenAddresses()).toEqual(["a@example.org", "c@example.org"]);
    const row = await database().message.findFirstOrThrow({ where: { failedAt: { not: null } } });
    expect(row).toMatchObject({ address: "b@example.org", attempts: 1, reply: "550 5.1.1 No such user here" });
    let asked = 0;
    server.behaviour = { recipient: () => ((asked += 1), null) };
    await write(["b@example.org"]);
    await work();
    expect(asked).toBe(0);
    expect(await database().message.count({ where: { failedAt: { not: null } } })).toBe(2);
    // The designer has cleared it up with them.
    await inTransaction((transaction) => sendAgain(transaction, { address: "b@example.org" }));
    await work();
    expect(takenAddresses()).toEqual(["a@example.org", "b@example.org", "b@example.org", "c@example.org"]);
  });

  it("that says later gets it later; that refuses the text gets it no more", async () => {
    let tries = 0;
    server.behaviour = { recipient: () => ((tries += 1) < 3 ? refusal(451, "4.7.1 Try again later") : null) };
    await write(["b@example.org"]);
    expect(await work()).toBe(1);
    expect(await database().message.findFirst()).toMatchObject({ reply: "451 4.7.1 Try again later", failedAt: null });
    await workForDays(1);
    expect([tries, takenAddresses()]).toEqual([3, ["b@example.org"]]);
    server.behaviour = { text: () => Promise.resolve(refusal(554, "5.6.0 Not wanted")) };
    await write(["c@example.org"]);
    await workForDays(1);
    expect(await database().message.findFirst({ where: { address: "c@example.org" } })).toMatchObject({
      ...{ attempts: 1, reply: "554 5.6.0 Not wanted", sentAt: null },
    });
    expect(await database().refusedAddress.count()).toBe(0);
  });

  it("that never takes a message is left in peace after some days, with its last words", async () => {
    server.behaviour = { recipient: () => refusal(452, "4.2.2 Mailbox full") };
    await write(["b@example.org"]);
    await workForDays(6);
    const row = await database().message.findFirstOrThrow();
    expect(row).toMatchObject({ attempts: 24, reply: "452 4.2.2 Mailbox full", dueAt: null });
    expect(row.failedAt).not.toBeNull();
  });

  it("that hangs up after it took the text gets it twice with the same Message-ID, the only case of a double", async () => {
    let texts = 0;
    server.behaviour = { text: () => Promise.resolve((texts += 1) === 1 ? "hang-up" : null) };
    await write(["b@example.org"]);
    await workForDays(1);
    const ids = server.taken.map(({ messageId }) => messageId);
    expect(ids).toHaveLength(2);
    expect(ids[0]).toBe(ids[1]);
    expect(ids[0]).toMatch(/^<[0-9a-f-]{36}@sizes\.example>$/);
    expect(await database().message.count({ where: { sentAt: { not: null } } })).toBe(1);
  });

  it("gets a message whose worker ended while it was sending", async () => {
    await write(["b@example.org"]);
    const [{ id } = { id: "" }] = await database().message.findMany();
    await database().message.update({ where: { id }, data: { dueAt: new Date(Date.now() + 15 * 60 * SECOND_MS) } });
    expect(await work()).toBe(0);
    vi.setSystemTime(Date.now() + 16 * 60 * SECOND_MS);
    expect(await work()).toBe(1);
    expect(takenAddresses()).toEqual(["b@example.org"]);
  });
});
