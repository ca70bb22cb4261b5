import { createHash, randomUUID } from "node:crypto";
import { runEngineTask } from "../src/engine/engine-task";
import { analyseCall } from "../src/features/results/mutations";
import { applicationLink } from "../src/features/recruiting/applications/access";
import type { ApplicationDocument } from "../src/features/recruiting/applications/schema";
import { takeApart } from "@/features/calls/report-schema";
import { storePicture } from "../src/server/photo-store";
import { linkTo } from "../src/server/link-key";
import { reader } from "../test/factories/call";
import { listingDocument } from "../test/factories/listing";
import { patternDocument } from "../test/factories/pattern";
import { makeDesigner, query, type Designer } from "./designer";

export const KINDS = ["visitor", "another designer", "viewer", "editor", "owner"] as const;

export type Kind = (typeof KINDS)[number];

/** A pattern with a call and a tester, and one person of each kind. */
export interface World {
  readonly patternId: string;
  readonly revisionId: string;
  readonly callId: string;
  /** Of a tester whose report was brought in. */
  readonly testerId: string;
  /** Of one who tests with the account of "another designer". */
  readonly ownTesterId: string;
  /** A tester who has not answered yet, and their link. */
  readonly invitedTesterId: string;
  readonly invitedLink: string;
  /** Another call of the pattern, whose listing is not published. */
  readonly draftCallId: string;
  readonly applicationId: string;
  /** Of that application. */
  readonly link: string;
  /** Mailed to the owner, to sign in. */
  readonly emailLink: string;
  /** Of reminders to the tester who tests with an account, and of the owner’s daily summary. */
  readonly remindersLink: string;
  readonly summaryLink: string;
  readonly planId: string;
  /** Asked for by the owner. */
  readonly gradingId: string;
  readonly invitationId: string;
  /** Of that invitation's link, to look. */
  readonly token: string;
  /** What the owner asked that tester about a number: not answered yet, and answered. */
  readonly numberQuestionId: string;
  /** Published to all testers, without numbers. */
  readonly correctionId: string;
  readonly answeredNumberQuestionId: string;
  /** A photo of that tester, and a use of their photos that they no longer allow. */
  readonly photoId: string;
  /** A photo of the pattern's sample. */
  readonly samplePhotoId: string;
  readonly withdrawalId: string;
  /** Null: a visitor is signed in as nobody. */
  readonly people: Readonly<Record<Kind, Designer | null>>;
}

export async function makeWorld(): Promise<World> {
  const [patternId, revisionId, callId, testerId] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()];
  const [ownTesterId, invitedTesterId] = [randomUUID(), randomUUID()];
  const draftCallId = randomUUID();
  const [planId, gradingId, invitationId, token] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()];
  const applicationId = randomUUID();
  const [another, viewer, editor, owner] = await Promise.all(Array.from({ length: 4 }, () => makeDesigner()));
  const people = {
    visitor: null,
    "another designer": another ?? null,
    viewer: viewer ?? null,
    editor: editor ?? null,
    owner: owner ?? null,
  };
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  for (const role of ["viewer", "editor", "owner"] as const) {
    const values = [patternId, people[role]?.accountId, role];
    await query("INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, $3)", values);
  }
  const document = JSON.stringify(patternDocument());
  const revision = "INSERT INTO revision (id, pattern_id, number, document, reason) VALUES ($1, $2, 1, $3, 'First')";
  await query(revision, [revisionId, patternId, document]);
  await query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'Invented call')", [callId, patternId]);
  await query("INSERT INTO call (id, pattern_id, title, follows_id) VALUES ($1, $2, 'Invented draft', $3)", [
    draftCallId,
    patternId,
    callId,
  ]);
  await query("INSERT INTO listing (call_id, document) VALUES ($1, '{\"typed\":{}}')", [draftCallId]);
  const tester = "INSERT INTO tester (id, call_id, code, position, size) VALUES ($1, $2, 'tester-1', 0, 'small')";
  await query(tester, [testerId, callId]);
  await inviteTester({ ids: [ownTesterId, callId, revisionId], code: "tester-2", position: 1, by: another?.accountId });
  await inviteTester({ ids: [invitedTesterId, callId, revisionId], code: "tester-3", position: 2 });
  const { report } = takeApart(reader("tester-1", { bust: 101, length: 40 }));
  const version =
    "INSERT INTO report (tester_id, version, revision_id, document, idempotency_key) VALUES ($1, 1, $2, $3, $4)";
  await query(version, [testerId, revisionId, JSON.stringify(report), randomUUID()]);
  const asked = { kind: "proposals", take: [{ kind: "allowance", id: "edging", by: "published" }] };
  const known = { cells: [], causes: [], testersBySize: [1, 0], status: "converged" };
  const plan =
    "INSERT INTO plan (id, call_id, request, differences, base_number, call_version, engine_version, output, idempotency_key) VALUES ($1, $2, $3, $4, 1, 1, '', '{\"status\":\"stopped\"}', $1)";
  await query(plan, [planId, callId, JSON.stringify(asked), JSON.stringify(known)]);
  const grading =
    "INSERT INTO grading (id, pattern_id, account_id, request, idempotency_key) VALUES ($1, $2, $3, '{}', $1)";
  await query(grading, [gradingId, patternId, people.owner?.accountId]);
  const invitation =
    "INSERT INTO invitation (id, pattern_id, role, token_hash, expires_at) VALUES ($1, $2, 'viewer', $3, now() + interval '1 day')";
  await query(invitation, [invitationId, patternId, createHash("sha256").update(token).digest("hex")]);
  const [numberQuestionId, answeredNumberQuestionId] = [randomUUID(), randomUUID()];
  const numberQuestion =
    "INSERT INTO number_question (id, tester_id, field, about, asks, idempotency_key, answer, answered_at) VALUES ($1, $2, 'worked.width', '98', 'Really 98?', $1, $3, $4)";
  await query(numberQuestion, [numberQuestionId, ownTesterId, null, null]);
  await query(numberQuestion, [answeredNumberQuestionId, ownTesterId, "Yes", new Date()]);
  const correctionId = randomUUID();
  const correction =
    "INSERT INTO correction (id, call_id, revision_id, text, idempotency_key) VALUES ($1, $2, $3, 'Row 1: work 4.', $1)";
  await query(correction, [correctionId, callId, revisionId]);
  const [photoId, withdrawalId] = [randomUUID(), randomUUID()];
  const photo = "INSERT INTO photo (id, tester_id, view, state, bytes) VALUES ($1, $2, 'front', 'ready', 1)";
  await query(photo, [photoId, ownTesterId]);
  await storePicture(photoId, "320.jpg", Buffer.from("bytes of a photo"));
  const samplePhotoId = randomUUID();
  const sample = "INSERT INTO photo (id, pattern_id, view, state, bytes) VALUES ($1, $2, 'front', 'ready', 1)";
  await query(sample, [samplePhotoId, patternId]);
  const withdrawal = "INSERT INTO photo_withdrawal (id, call_id, tester_id, use) VALUES ($1, $2, $3, 'social_media')";
  await query(withdrawal, [withdrawalId, callId, ownTesterId]);
  await publish(callId);
  await applyTo(callId, applicationId);
  // What the worker may have read before the report was there is no longer the call's.
  await query("UPDATE call SET version = version + 1, version_raised_at = now() WHERE id = $1", [callId]);
  await analyseCall(callId, (task) => Promise.resolve((worldsAnalysis ??= runEngineTask(task, noSolver))));
  const link = applicationLink(applicationId);
  const emailLink = await mailLinkTo(people.owner);
  const invitedLink = linkTo("invitation", { id: invitedTesterId, version: 1 });
  const testers = { testerId, ownTesterId, invitedTesterId, invitedLink };
  return {
    ...{ patternId, revisionId, callId, draftCallId },
    ...testers,
    applicationId,
    ...{ link, emailLink },
    remindersLink: linkTo("reminders", { id: ownTesterId, version: 1 }),
    summaryLink: linkTo("summary", { id: people.owner?.accountId ?? "", version: 1 }),
    planId,
    gradingId,
    invitationId,
    token,
    numberQuestionId,
    correctionId,
    answeredNumberQuestionId,
    ...{ photoId, samplePhotoId },
    withdrawalId,
    people,
  };
}

interface InvitedTester {
  /** Ids of the tester, the call and the revision. */
  readonly ids: readonly [string, string, string];
  readonly code: string;
  readonly position: number;
  /** The account that has accepted; left out: nobody has. */
  readonly by?: string;
}

async function inviteTester({ ids: [testerId, callId, revisionId], code, position, by }: InvitedTester): Promise<void> {
  const statement = `INSERT INTO tester (id, call_id, revision_id, code, position, size, invited_at, invitation_expires_at, account_id, accepted_at)
    VALUES ($1, $2, $3, $4, $5, 'small', now(), now() + interval '7 days', $6, $7)`;
  const accepted = by === undefined ? [null, null] : [by, new Date()];
  await query(statement, [testerId, callId, revisionId, code, position, ...accepted]);
  await query("INSERT INTO tester_contact (tester_id, name) VALUES ($1, 'Invented Tester')", [testerId]);
}

/** Lets people apply to a call. */
async function publish(callId: string): Promise<void> {
  await query("INSERT INTO place (call_id, size, least, wanted, most) VALUES ($1, 'small', 1, 2, 3)", [callId]);
  await query("INSERT INTO agreement (call_id, version, text) VALUES ($1, 1, 'You test and you tell.')", [callId]);
  await query(
    "INSERT INTO listing (call_id, document, published_at, apply_until) VALUES ($1, $2, now(), '2090-03-15')",
    [callId, JSON.stringify(listingDocument())],
  );
}

async function applyTo(callId: string, applicationId: string): Promise<void> {
  const application =
    "INSERT INTO application (id, call_id, position, document, agreement_version, agreed_at, idempotency_key) VALUES ($1, $2, 0, $3, 1, now(), $1)";
  await query(application, [applicationId, callId, JSON.stringify(APPLICATION)]);
  const contact = "INSERT INTO application_contact (application_id, call_id, name, email) VALUES ($1, $2, 'Maja', $3)";
  await query(contact, [applicationId, callId, `${applicationId}@example.org`]);
  const body = `INSERT INTO application_body (application_id, measurements, typed) VALUES ($1, '{"bust":97}', '{"bust":"97"}')`;
  await query(body, [applicationId]);
}

/** A link that signs in to an account. */
async function mailLinkTo(person: Designer | null): Promise<string> {
  const id = randomUUID();
  const statement = `INSERT INTO email_link (id, address, account_id, session_version, expires_at)
    VALUES ($1, $2, $3, 1, now() + interval '1 hour')`;
  await query(statement, [id, person?.email, person?.accountId]);
  return linkTo("email", { id, version: 1 });
}

const APPLICATION: ApplicationDocument = {
  ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us" },
  ...{ timeZone: null, experience: "first", handle: "", pastWork: "" },
};

/** Every world's call has the same reports, so that a process analyses one. */
let worldsAnalysis: string | undefined;

function noSolver(): never {
  throw new Error("nothing is solved here");
}

/** The same world as if its pattern and its call had never been: their ids lead nowhere. */
export function absentWorld(world: World): World {
  return {
    ...world,
    patternId: randomUUID(),
    revisionId: randomUUID(),
    callId: randomUUID(),
    draftCallId: randomUUID(),
    testerId: randomUUID(),
    ownTesterId: randomUUID(),
    invitedTesterId: randomUUID(),
    invitedLink: randomUUID(),
    applicationId: randomUUID(),
    link: `${randomUUID()}.${"x".repeat(43)}`,
    emailLink: randomUUID(),
    remindersLink: randomUUID(),
    summaryLink: randomUUID(),
    planId: randomUUID(),
    gradingId: randomUUID(),
    invitationId: randomUUID(),
    token: randomUUID(),
    photoId: randomUUID(),
    samplePhotoId: randomUUID(),
    withdrawalId: randomUUID(),
  };
}

/** The same answer for every kind of visitor. */
export function everyone<Answer>(answer: Answer): Record<Kind, Answer> {
  return { visitor: answer, "another designer": answer, viewer: answer, editor: answer, owner: answer };
}

/** For the signed-in, whoever they are. */
export function signedIn<Answer>(visitor: Answer, others: Answer): Record<Kind, Answer> {
  return { ...everyone(others), visitor };
}
