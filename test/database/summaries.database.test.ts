import { expect, it, vi } from "vitest";
import { hasDailySummary } from "@/features/accounts/data";
import { summaryAccess } from "@/features/accounts/summary-access";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { nextSummary, writeSummaries } from "../../src/features/results/summary/summary-mutations";
import { stopByLink } from "../../src/features/testing/reminders/stop-mutations";
import { makeViewer } from "./make-account";
import { inviteTo, makeCall } from "./invited-tester";
import { startMailServer } from "./mail-server";
import { emptyOutbox, work } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const { takenAddresses } = emptyOutbox(server);

const MORNING = new Date("2090-02-01T23:00:00Z");

/** A designer in Tokyo with two tests; in one of them an offer has run out unanswered. */
async function designer(): Promise<Viewer> {
  await database().account.updateMany({ data: { dailySummary: false } });
  vi.setSystemTime("2090-01-01T00:00:00Z");
  const ana = await makeViewer("Ana");
  await database().account.update({ where: { id: ana.accountId }, data: { timeZone: "Asia/Tokyo" } });
  await inviteTo(await makeCall(ana));
  await makeCall(ana);
  await database().message.deleteMany();
  vi.setSystemTime(MORNING);
  return ana;
}

it("is written once by two workers, at eight in the designer’s morning, with the way to each thing", async () => {
  const ana = await designer();
  expect(await nextSummary(new Date(MORNING.getTime() - 1))).toBeNull();
  expect(await nextSummary(MORNING)).toBe(ana.accountId);
  await Promise.all([writeSummaries(MORNING), writeSummaries(MORNING)]);
  await writeSummaries(new Date(MORNING.getTime() + 60 * 60_000));
  expect(await work()).toBe(1);
  expect(takenAddresses()).toEqual([ana.email]);
  expect(server.taken[0]?.subject).toBe("What needs you in “Test”");
  expect(server.taken[0]?.text).toMatch(/\/calls\/[\w-]+\/progress/);
  expect(server.taken[0]?.text).not.toContain("Bea");
});

it("comes no more once it was stopped by the link in it, and not where nothing needs them", async () => {
  const ana = await designer();
  await writeSummaries(MORNING);
  await work();
  const [, link = ""] = /\/reminders\/(\S+)/.exec(server.taken[0]?.text ?? "") ?? [];
  expect(await hasDailySummary(await summaryAccess(link))).toBe(true);
  const next = new Date(MORNING.getTime() + 24 * 60 * 60_000);
  await database().tester.updateMany({
    where: { call: { pattern: { memberships: { some: { accountId: ana.accountId } } } } },
    data: { withdrawnAt: new Date() },
  });
  await writeSummaries(next);
  expect(await work()).toBe(0);
  expect(await stopByLink(link)).toBe(true);
  expect(await hasDailySummary(await summaryAccess(link))).toBe(false);
  expect(await nextSummary(new Date(next.getTime() + 24 * 60 * 60_000))).toBeNull();
});
