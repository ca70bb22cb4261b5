import { randomUUID } from "node:crypto";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { TESTER_NAMES } from "../prisma/demo/tester-names";
import { benchCall } from "../src/cli/bench/bench-call";
import { runEngineTask } from "../src/engine/engine-task";
import { takeApart, type StoredReport } from "../src/features/calls/report-schema";
import { analyseCall } from "../src/features/results/mutations";
import { listingDocument } from "../test/factories/listing";
import { query, type Designer } from "./designer";

/** What a person of the call has done; each number is so many days ago. */
interface Person {
  readonly size: string;
  /** What the designer's lists say about them; undefined: they need nothing. */
  readonly need?: string;
  readonly accepted?: number;
  readonly answersUntil?: number;
  readonly declined?: number;
  readonly stopped?: number;
  /** Their own last day to report. */
  readonly dueAgo?: number;
  readonly update?: readonly ["track" | "behind" | "stuck", number, string];
  readonly draft?: readonly ["swatch" | "more", number];
  readonly report?: readonly ["swatch" | "off gauge" | "part" | "whole", number];
}

const size = (label: string) => saltmarshPattern.sizes.find((each) => each.label === label)?.id ?? "";

/** Nine who are finished, whatever they said before, one a size. */
const FINISHED: readonly Person[] = saltmarshPattern.sizes.map(({ id }, index) => ({
  ...{ size: id, accepted: 60, report: ["whole", 30] as const },
  ...(index === 0 ? { update: ["stuck", 40, "which row?"] as const } : {}),
  ...(index === 1 ? { update: ["behind", 35, ""] as const } : {}),
  ...(index === 2 ? { dueAgo: 35 } : {}),
}));

const AT_WORK: readonly Person[] = [
  { size: size("XS"), accepted: 2 },
  { size: size("S"), accepted: 20, draft: ["swatch", 3] },
  { size: size("M"), accepted: 20, report: ["swatch", 4] },
  { size: size("L"), accepted: 20, draft: ["more", 1] },
  { size: size("XL"), accepted: 30, report: ["part", 2] },
  { size: size("2X"), answersUntil: -5 },
  { size: size("3X"), answersUntil: -2 },
  { size: size("4X"), accepted: 20, update: ["track", 1, ""] },
];

const IN_NEED: readonly Person[] = [
  { need: "stuck: “the underarm”", size: size("M"), accepted: 20, update: ["stuck", 1, "the underarm"] },
  { need: "stuck", size: size("5X"), accepted: 20, update: ["stuck", 2, ""] },
  { need: "a spot in their size is open", size: size("L"), accepted: 30, stopped: 6 },
  { need: "late", size: size("S"), accepted: 40, dueAgo: 3, draft: ["more", 2] },
  { need: "late", size: size("XL"), accepted: 40, dueAgo: 1, update: ["track", 4, ""] },
  { need: "a spot in their size is open", size: size("3X"), answersUntil: 3 },
  { need: "a spot in their size is open", size: size("4X"), declined: 2 },
  { need: "off gauge", size: size("2X"), accepted: 20, report: ["off gauge", 2] },
  { need: "off gauge", size: size("XS"), accepted: 20, report: ["off gauge", 5] },
  { need: "no news for 14 days", size: size("5X"), accepted: 14 },
  { need: "no news for 11 days", size: size("M"), accepted: 30, draft: ["more", 11] },
  { need: "behind: “a week”", size: size("4X"), accepted: 20, update: ["behind", 1, "a week"] },
];

/** Their spots have gone to others. */
const REPLACED: readonly Person[] = [{ size: size("S"), accepted: 40, stopped: 20 }];

const PEOPLE: readonly Person[] = [...FINISHED, ...AT_WORK, ...IN_NEED, ...REPLACED];

/** Sizes in which one spot is open. */
const WITH_OPEN_SPOT = [size("L"), size("3X"), size("4X")];

export interface Thirty {
  readonly callId: string;
  /** Name -> what the designer's lists say about them. */
  readonly inNeed: Readonly<Record<string, string>>;
  readonly others: readonly string[];
}

/** A call of thirty testers in every state, two applications without a decision, and a question without an answer. */
export async function makeThirty(owner: Designer): Promise<Thirty> {
  const { callId, revisionId } = await makeCall(owner);
  await Promise.all(PEOPLE.map((person, position) => addPerson(person, { position, callId, revisionId })));
  for (const { id } of saltmarshPattern.sizes) {
    const standing = PEOPLE.filter((person) => person.size === id && takesSpot(person)).length;
    const wanted = standing + (WITH_OPEN_SPOT.includes(id) ? 1 : 0);
    await query("INSERT INTO place (call_id, size, least, wanted, most) VALUES ($1, $2, 1, $3, $3)", [
      callId,
      id,
      wanted,
    ]);
  }
  for (const position of [0, 1]) await apply(callId, position);
  await ask(callId, revisionId);
  // What the worker may have read of them before they were all there is no longer the call's.
  await query("UPDATE call SET version = version + 1, version_raised_at = now() WHERE id = $1", [callId]);
  await analyseCall(callId, (task) => Promise.resolve(runEngineTask(task, noSolver)));
  const named = PEOPLE.map(({ need }, position) => ({ name: nameAt(position), need }));
  return {
    callId,
    inNeed: Object.fromEntries(named.flatMap(({ name, need }) => (need === undefined ? [] : [[name, need]]))),
    others: named.flatMap(({ name, need }) => (need === undefined ? [name] : [])),
  };
}

function noSolver(): never {
  throw new Error("nothing is solved here");
}

function takesSpot({ stopped, declined, answersUntil }: Person): boolean {
  return stopped === undefined && declined === undefined && (answersUntil === undefined || answersUntil < 0);
}

function nameAt(position: number): string {
  const name = TESTER_NAMES[position % TESTER_NAMES.length] ?? "";
  return position < TESTER_NAMES.length ? name : `${name} Berg`;
}

async function makeCall({ accountId }: Designer): Promise<{ callId: string; revisionId: string }> {
  const [patternId, revisionId, callId] = [randomUUID(), randomUUID(), randomUUID()];
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  const owner = "INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')";
  await query(owner, [patternId, accountId]);
  const revision = "INSERT INTO revision (id, pattern_id, number, document, reason) VALUES ($1, $2, 1, $3, 'First')";
  await query(revision, [revisionId, patternId, JSON.stringify(saltmarshPattern)]);
  await query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'Winter test')", [callId, patternId]);
  await query("INSERT INTO agreement (call_id, version, text) VALUES ($1, 1, 'You test and you tell.')", [callId]);
  const dates = { applyUntil: dayIn(2), startOn: dayIn(-60), swatchBy: dayIn(10), reportBy: dayIn(40) };
  const listing = { ...listingDocument({ dates }), bodyAsked: ["bust"], fitBy: ["bust"] };
  const published =
    "INSERT INTO listing (call_id, document, published_at, apply_until) VALUES ($1, $2, now(), now() + interval '3 days')";
  await query(published, [callId, JSON.stringify(listing)]);
  return { callId, revisionId };
}

interface Seat {
  readonly position: number;
  readonly callId: string;
  readonly revisionId: string;
}

async function addPerson(person: Person, { position, callId, revisionId }: Seat): Promise<void> {
  const testerId = randomUUID();
  const { accepted, declined, stopped, answersUntil = -7, update, draft, report } = person;
  await query(
    `INSERT INTO tester (id, call_id, revision_id, code, position, size, dates, invited_at, invitation_expires_at, accepted_at, declined_at, stopped_at)
     VALUES ($1, $2, $3, $4, $5, $6, $7, now() - interval '70 days', $8, $9, $10, $11)`,
    [
      ...[testerId, callId, revisionId, `tester-${position + 1}`, position, person.size, datesOf(person)],
      ...[ago(answersUntil), ago(accepted), ago(declined), ago(stopped)],
    ],
  );
  const contact = "INSERT INTO tester_contact (tester_id, name, email) VALUES ($1, $2, $3)";
  await query(contact, [testerId, nameAt(position), `tester-${position + 1}@example.org`]);
  if (update !== undefined) {
    const [status, days, note] = update;
    const milestone =
      "INSERT INTO milestone (tester_id, status, note, created_at, idempotency_key) VALUES ($1, $2, $3, $4, $1)";
    await query(milestone, [testerId, status, note, ago(days)]);
  }
  if (draft !== undefined) {
    const typed = draft[0] === "swatch" ? { "swatch.0.stitches": "23" } : { "swatch.0.stitches": "23", hours: "12" };
    const drafted = "INSERT INTO report_draft (tester_id, typed, updated_at) VALUES ($1, $2, $3)";
    await query(drafted, [testerId, JSON.stringify(typed), ago(draft[1])]);
  }
  if (report !== undefined) {
    const sent =
      "INSERT INTO report (tester_id, version, revision_id, document, created_at, idempotency_key) VALUES ($1, 1, $2, $3, $4, $1)";
    await query(sent, [testerId, revisionId, JSON.stringify(documentOf(person, report[0])), ago(report[1])]);
  }
}

function ago(days: number | undefined): Date | null {
  return days === undefined ? null : new Date(Date.now() - days * DAY_MS);
}

function datesOf({ dueAgo }: Person): string | null {
  if (dueAgo === undefined) return null;
  return JSON.stringify({ startOn: dayIn(-dueAgo - 30), swatchBy: dayIn(-dueAgo - 20), reportBy: dayIn(-dueAgo - 1) });
}

function dayIn(days: number): string {
  return new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10);
}

const DAY_MS = 24 * 60 * 60 * 1000;
const MEASURED = benchCall(saltmarshPattern.sizes.length * 2).testers;

function documentOf({ size: own }: Person, kind: NonNullable<Person["report"]>[0]): StoredReport {
  const [made] = MEASURED.filter((tester) => tester.size === own);
  if (made === undefined) throw new Error(`nobody measured ${own}`);
  const { report } = takeApart(made);
  const isSwatch = kind === "swatch" || kind === "off gauge";
  const gauge = saltmarshPattern.fabrics[0]?.gauge ?? { stitches: 0, rows: 0 };
  const stitches = gauge.stitches * (kind === "off gauge" ? 1.1 : 1);
  if (isSwatch)
    return {
      ...{ size: own, readings: [], yarn: [] },
      swatches: [{ fabric: "stocking", toolMm: 4, ...gauge, stitches, acrossCm: 10, alongCm: 10, washed: true }],
    };
  const measured = saltmarshPattern.measurements.map(({ id }) => id);
  if (kind === "part") {
    const [first] = measured;
    return { ...report, changed: [], readings: report.readings.filter(({ measurement }) => measurement === first) };
  }
  const read = new Set(report.readings.map(({ measurement }) => measurement));
  return { ...report, changed: measured.filter((id) => !read.has(id)) };
}

async function apply(callId: string, position: number): Promise<void> {
  const id = randomUUID();
  const said = { forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us", timeZone: null, handle: "" };
  const document = { ...said, accepts: null, prefers: [], experience: "some", pastWork: "" };
  const application =
    "INSERT INTO application (id, call_id, position, document, agreement_version, agreed_at, idempotency_key) VALUES ($1, $2, $3, $4, 1, now(), $1)";
  await query(application, [id, callId, position, JSON.stringify(document)]);
  const contact = "INSERT INTO application_contact (application_id, call_id, name, email) VALUES ($1, $2, $3, $4)";
  await query(contact, [id, callId, `Applicant ${position + 1}`, `${id}@example.org`]);
  const body = "INSERT INTO application_body (application_id, measurements) VALUES ($1, $2)";
  await query(body, [id, JSON.stringify({ bust: 100 + position })]);
}

async function ask(callId: string, revisionId: string): Promise<void> {
  const question =
    "INSERT INTO question (call_id, tester_id, revision_id, place, asks, idempotency_key) SELECT $1, id, $2, $3, 'Loosely?', $4 FROM tester WHERE call_id = $1 AND position = 12";
  const place = { block: 0, hash: "", words: "Cast on" };
  await query(question, [callId, revisionId, JSON.stringify(place), randomUUID()]);
}
