import { randomUUID } from "node:crypto";
import { applicationAccess, applicationLink } from "@/features/applications/access";
import { sayWord, storeApplication } from "@/features/applications/mutations";
import { withdrawApplication } from "@/features/applications/own-mutations";
import type { CallAccess } from "@/features/calls/access";
import { publishedCall } from "@/features/openings/access";
import { begunOpening } from "@/features/openings/begun-opening";
import { openCall, publishOpening } from "@/features/openings/mutations";
import { wholeOpening } from "@/features/openings/whole-opening";
import { placingRows } from "@/features/places/data";
import { changePlace, givePlaces, sendPlacing } from "@/features/places/mutations";
import { placedNow, placingName } from "@/features/places/placing";
import type { PatternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { dayAt, daysAfter } from "@/server/time-zone";
import type { Viewer } from "@/server/viewer";

const ZONE = "Europe/Lisbon";
const TITLE = "Vest test (invented)";

/** A call with an opening that nobody sees yet. @returns its id. */
export async function inventedCall(pattern: PatternAccess): Promise<string> {
  const typed = begunOpening((await latestRevision(pattern)).document, { title: TITLE, places: null, timeZone: ZONE });
  return (await openCall(pattern, { title: TITLE, typed, submissionKey: randomUUID() })).callId;
}

/** Publishes the call, or changes what is published, with this agreement. */
export async function publish(access: CallAccess, { version, agreement }: { version: number; agreement: string }) {
  const { document: pattern } = await latestRevision(access.pattern);
  const now = new Date();
  const today = dayAt(now, ZONE);
  const typed = {
    ...begunOpening(pattern, { title: TITLE, places: null, timeZone: ZONE }),
    ...{ "least.small": "1", "wanted.small": "6", "least.large": "1", "wanted.large": "6" },
    ...{ applyUntil: daysAfter(today, 7), startOn: daysAfter(today, 10) },
    ...{ swatchBy: daysAfter(today, 20), reportBy: daysAfter(today, 60) },
    ...{ gives: "The pattern.", agreement },
  };
  const whole = wholeOpening(typed, { pattern, now, stands: null });
  if (!whole.ok) throw new Error(whole.faults.map(({ says }) => says).join(" "));
  const saved = await publishOpening(access, { version, opening: whole.opening });
  if (saved.status !== "saved") throw new Error(`the opening was not published: ${saved.status}`);
}

interface Applying {
  readonly bust: number;
  readonly agreementVersion: number;
  readonly account?: Viewer;
}

/** @returns the application's id. */
export async function applies(callId: string, name: string, given: Applying): Promise<string> {
  const { bust, agreementVersion, account } = given;
  return await storeApplication(await publishedCall(callId), {
    ...{ name, email: `${name.toLowerCase()}@example.org`, agreementVersion, submissionKey: randomUUID() },
    ...{ accountId: account?.accountId ?? null, measurements: { bust }, typed: { bust: String(bust) } },
    document: {
      ...{ accepts: null, prefers: [], forAnother: false, yarn: "Invented wool", tool: "4 mm", unit: "cm" },
      ...{ terms: "uk", timeZone: "Pacific/Auckland", experience: "some", handle: "", pastWork: "" },
    },
  });
}

/** Decides on applicants, gives them places and invites those who have one; a few are settled by hand. */
export async function choose(access: CallAccess, ids: readonly string[]): Promise<void> {
  const [gone, unwanted, undecided, waiting, locked, ...others] = ids;
  if (!gone || !unwanted || !undecided || !waiting || !locked) throw new Error("more applicants are needed");
  await withdrawApplication(await applicationAccess(applicationLink(gone)));
  await sayWord(access, { applicationId: unwanted, word: "no" });
  for (const applicationId of others) await sayWord(access, { applicationId, word: "yes" });
  for (const applicationId of [waiting, locked]) await sayWord(access, { applicationId, word: "maybe" });
  await changePlace(access, { applicationId: waiting, change: { kind: "leave-waiting" } });
  await changePlace(access, { applicationId: locked, change: { kind: "move", size: "large" } });
  await givePlaces(access, { considering: "maybe", now: new Date() });
  const saw = placingName(placedNow(await placingRows(access)));
  await sendPlacing(access, { saw, endsAt: new Date(Date.now() + 14 * 86_400_000) });
}
