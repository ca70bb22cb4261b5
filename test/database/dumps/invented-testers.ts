import { randomUUID } from "node:crypto";
import { readInstructions } from "@/engine/instructions";
import type { CallAccess } from "@/features/calls/access";
import { latestRevision } from "@/features/patterns/data";
import { answerQuestions, askQuestion, tellTrouble } from "@/features/questions/mutations";
import { readDraft } from "@/features/reports/data";
import { keepFields } from "@/features/reports/draft-mutations";
import { decide } from "@/features/reports/mutations";
import { sendReport } from "@/features/reports/send-mutations";
import { invitationLink, invitedAccess, type TesterAccess } from "@/features/testers/access";
import { forgetTester } from "@/features/testers/forget-mutations";
import { acceptInvited, declineInvited } from "@/features/testers/invited-mutations";
import { goOnAfterAll, sayMilestone, stopTest } from "@/features/testers/milestone-mutations";
import { setTesterPassword } from "@/features/testers/password-mutations";
import { inviteByHand, noteTester, withdrawInvited } from "@/features/testers/progress-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";

/** What a tester has typed who is on gauge: swatch, counts as the pattern has them, and two readings. */
const typed = (bust: string, length: string): Record<string, string> => ({
  ...{ "swatch.1.fabric": "main", "swatch.1.toolMm": "4", "swatch.1.stitches": "20", "swatch.1.across": "10" },
  ...{ "swatch.1.rows": "25", "swatch.1.along": "10", "swatch.1.washed": "yes", asWritten: "yes" },
  ...{ "reading.bust.1.value": bust, "reading.length.1.value": length, hours: "12", "fit.bust.scale": "0" },
});

/** All that can become of who is invited to the call. */
export async function inventedTesters(owner: CallAccess, accounts: { designer: Viewer; tester: Viewer }) {
  const rows = await database().tester.findMany({ where: { callId: owner.callId }, orderBy: { position: "asc" } });
  const accounted = rows.find(({ accountId }) => accountId !== null);
  const ids = rows.filter(({ accountId }) => accountId === null).map(({ id }) => id);
  const [sends, amends, declines, withdrawn, stops, returns, forgotten, drafts] = ids;
  if (!sends || !amends || !declines || !withdrawn || !stops || !returns || !forgotten || !drafts || !accounted)
    throw new Error("more testers are needed");

  await report(await accepted(sends), typed("100.5", "40.5"));
  await amending(owner, await accepted(amends));
  await declineInvited(await invited(declines), null);
  await withdrawInvited(owner, withdrawn);
  await stopTest(await accepted(stops), { note: "No time after all", submissionKey: randomUUID() });
  const back = await accepted(returns);
  await stopTest(back, { note: "", submissionKey: randomUUID() });
  await goOnAfterAll(back, randomUUID());
  const leaving = await accepted(forgotten);
  await report(leaving, typed("103", "41"));
  await forgetTester(leaving);
  const writing = await accepted(drafts);
  await type(writing, typed("101", ""));
  await withAccount(accounted.id, accounts.tester);
  await inviteByHand(owner, { name: "Invited by hand", email: null, size: "large", endsAt: inTwoWeeks(), self: null });
  const self = accounts.designer;
  await inviteByHand(owner, { name: self.name, email: null, size: "small", endsAt: inTwoWeeks(), self });
  await words(owner, writing);
}

/** Sends twice, with decisions on both versions, and sets a password afterwards. */
async function amending(owner: CallAccess, access: TesterAccess): Promise<void> {
  await report(access, typed("50", "42"));
  const { code: tester } = await database().tester.findUniqueOrThrow({ where: { id: access.testerId } });
  await decide(owner, { tester, part: "readings", position: 1, decision: "keep" });
  await report(access, { "reading.bust.1.value": "101.5" });
  await decide(owner, { tester, part: "readings", position: 0, decision: "set-aside" });
  await setTesterPassword(access, {
    name: "Amending",
    email: "amending@example.org",
    password: "an invented password",
  });
}

async function withAccount(testerId: string, viewer: Viewer): Promise<void> {
  await acceptInvited(await invited(testerId), { viewer, unit: "in", terms: "us", timeZone: "America/Toronto" });
  await report(proof(await rowOf(testerId)), typed("47 1/4", "17 1/2"));
}

/** Milestones, questions with and without an answer, a place that gave trouble, and a note of the designer's. */
async function words(owner: CallAccess, tester: TesterAccess): Promise<void> {
  for (const word of ["track", "stuck"] as const)
    await sayMilestone(tester, { word, note: `Invented: ${word}`, submissionKey: randomUUID() });
  const { revisionId, document } = await latestRevision(owner.pattern);
  const [first, second] = readInstructions(document.instructions ?? "");
  if (!first || !second) throw new Error("the pattern has too few instructions");
  const at = (place: typeof first.place) => ({ revisionId, place, submissionKey: randomUUID() });
  await askQuestion(tester, { ...at(first.place), asks: "Which side faces me?" });
  await askQuestion(tester, { ...at(second.place), asks: "How often?" });
  await tellTrouble(tester, { ...at(second.place), happened: "One stitch was left.", did: "Worked it too." });
  const { id } = await database().question.findFirstOrThrow({ where: { asks: "Which side faces me?" } });
  await answerQuestions(owner, { questionIds: [id], answer: "The right side.", seenAt: null });
  await noteTester(owner, tester.testerId, "Invented note: likes charts.");
}

async function report(access: TesterAccess, texts: Readonly<Record<string, string>>): Promise<void> {
  await type(access, texts);
  await sendReport(access, (await readDraft(access)).version);
}

async function type(access: TesterAccess, texts: Readonly<Record<string, string>>): Promise<void> {
  const { typed: stored } = await readDraft(access);
  const changes = Object.entries(texts).map(([field, becomes]) => ({ field, was: stored[field] ?? "", becomes }));
  const { refused } = await keepFields(access, changes);
  if (refused.length > 0) throw new Error(`refused: ${JSON.stringify(refused)}`);
}

async function accepted(testerId: string): Promise<TesterAccess> {
  const choices = { unit: "cm", terms: "uk", timeZone: "Europe/Lisbon" } as const;
  if (!(await acceptInvited(await invited(testerId), { viewer: null, ...choices })))
    throw new Error("an invitation was not accepted");
  return proof(await rowOf(testerId));
}

async function invited(testerId: string) {
  const { linkVersion } = await rowOf(testerId);
  return await invitedAccess(invitationLink({ testerId, linkVersion }));
}

/** What a tester's cookie or session would prove: `testerAccess` reads both from a request, and there is none here. */
function proof({ id, callId, accountId, linkVersion }: Awaited<ReturnType<typeof rowOf>>): TesterAccess {
  return { testerId: id, callId, accountId, linkVersion } as TesterAccess;
}

function rowOf(testerId: string) {
  return database().tester.findUniqueOrThrow({ where: { id: testerId } });
}

function inTwoWeeks(): Date {
  return new Date(Date.now() + 14 * 86_400_000);
}
