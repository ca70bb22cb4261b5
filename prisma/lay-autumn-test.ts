import { randomUUID } from "node:crypto";
import { readInstructions, type Place } from "@/engine/instructions";
import type { Places } from "@/engine/pattern";
import { typedOfReport, type TypedReport } from "@/engine/reporting";
import { seededRandom } from "@/engine/seeded-random";
import { simulateCall } from "@/engine/simulation";
import { takeApart, type StoredReport } from "@/features/calls/report-schema";
import { database } from "@/server/database";
import { formatLength } from "@/ui/format-length";
import type { ApplicationDocument } from "../src/features/recruiting/applications/schema";
import { AUTUMN_CORRECTION, AUTUMN_QUESTIONS, AUTUMN_TROUBLES } from "./demo/autumn-notes";
import {
  AUTUMN_APPLICANTS,
  AUTUMN_PEOPLE,
  autumnSize,
  type AutumnApplicant,
  type AutumnPerson,
} from "./demo/autumn-people";
import { realPattern } from "./demo/saltmarsh-call";
import { saltmarshDay } from "./demo/saltmarsh-listing";
import { saltmarshPattern } from "./demo/saltmarsh-pattern";

const SEED = 20_261_201;
const DAY_MS = 24 * 60 * 60 * 1_000;
const INVITED_AGO = 33;
/** Before their report is due, days. */
const SWATCH_BEFORE_REPORT = 40;
const START_BEFORE_REPORT = 55;

/** Every size wants two testers. */
export const AUTUMN_PLACES: Places = Object.fromEntries(
  saltmarshPattern.sizes.map(({ id }) => [id, { least: 1, wanted: 2 }]),
);

interface LaidTest {
  readonly callId: string;
  readonly revisionId: string;
  readonly designerId: string;
  readonly now: Date;
}

/** Fills the second test of the demonstration: testers at every stage, applicants, questions, trouble and a correction. */
export async function layAutumnPeople(test: LaidTest): Promise<void> {
  const testers = new Map<string, string>();
  for (const [position, person] of AUTUMN_PEOPLE.entries())
    testers.set(person.name, await layTester(test, person, position));
  for (const [position, applicant] of AUTUMN_APPLICANTS.entries()) await layApplicant(test, applicant, position);
  await layNotes(test, testers);
  await layCorrection(test, testers);
}

async function layTester(test: LaidTest, person: AutumnPerson, position: number): Promise<string> {
  const { callId, revisionId } = test;
  const { name, accepted, declined, stopped, answersUntil = INVITED_AGO - 7, due, update, draft, report } = person;
  const size = autumnSize(person.size);
  const document = report === undefined ? undefined : reportOf(size, report.kind);
  const isAccepted = accepted !== undefined;
  const { id } = await database().tester.create({
    data: {
      ...{ callId, revisionId, code: `tester-${position + 1}`, position, size, timeZone: "Europe/Lisbon" },
      ...(due === undefined ? {} : { dates: ownDates(test, due) }),
      invitedAt: ago(test, INVITED_AGO),
      invitationExpiresAt: ago(test, answersUntil),
      ...(isAccepted ? { acceptedAt: ago(test, accepted), agreementVersion: 1, agreedAt: ago(test, accepted) } : {}),
      ...(declined === undefined ? {} : { declinedAt: ago(test, declined) }),
      ...(stopped === undefined ? {} : { stoppedAt: ago(test, stopped) }),
      contact: { create: { name, email: `${addressOf(name)}@example.org` } },
      body: { create: { measurements: bodyNear(size, position) } },
      ...(update === undefined
        ? {}
        : {
            milestones: {
              create: {
                ...{ status: update.status, note: update.note },
                ...{ createdAt: ago(test, update.ago), idempotencyKey: randomUUID() },
              },
            },
          }),
      ...(draft === undefined
        ? {}
        : {
            reportDraft: {
              create: { typed: { ...typedAsSent(document), ...draft.typed }, updatedAt: ago(test, draft.ago) },
            },
          }),
      ...(report === undefined || document === undefined
        ? {}
        : {
            reports: {
              create: {
                ...{ version: 1, revisionId, idempotencyKey: randomUUID(), createdAt: ago(test, report.ago) },
                document,
              },
            },
          }),
    },
    select: { id: true },
  });
  return id;
}

/** The fields of a report as they stood when it was sent. */
function typedAsSent(report: StoredReport | undefined): TypedReport {
  if (report === undefined) return {};
  const formatted = (cm: number) => formatLength(cm, "cm");
  const context = { pattern: saltmarshPattern, size: report.size, unit: "cm", formatLength: formatted } as const;
  return typedOfReport({ report, typed: {} }, context);
}

function ownDates({ now }: LaidTest, due: number) {
  return {
    startOn: saltmarshDay(now, -due - START_BEFORE_REPORT),
    swatchBy: saltmarshDay(now, -due - SWATCH_BEFORE_REPORT),
    reportBy: saltmarshDay(now, -due),
  };
}

const MEASURED = simulateCall({
  ...{ pattern: saltmarshPattern, real: realPattern(), seed: SEED, places: AUTUMN_PLACES },
  testers: Object.fromEntries(saltmarshPattern.sizes.map(({ id }) => [id, 1])),
  habits: {
    ...{ gaugeSpread: 0.008, driftSd: 0.015, readingSd: 0.35, roundCm: 0.5 },
    ...{ missingReadings: 0, missingSwatches: 0, entryErrorShare: 0, yarnRatio: 4.6 },
  },
}).call.testers;
const OFF_GAUGE = 1.09;

function reportOf(size: string, kind: NonNullable<AutumnPerson["report"]>["kind"]): StoredReport {
  const made = MEASURED.find((tester) => tester.size === size);
  if (made === undefined) throw new Error(`nobody measured ${size}`);
  const { report } = takeApart(made);
  if (kind === "whole") return report;
  const factor = kind === "off gauge" ? OFF_GAUGE : 1;
  const swatches = report.swatches.map((swatch) => ({ ...swatch, stitches: Math.round(swatch.stitches * factor) }));
  return { size, swatches, readings: [], yarn: [] };
}

async function layApplicant(test: LaidTest, applicant: AutumnApplicant, position: number): Promise<void> {
  const { callId } = test;
  const { name, near, decision, pastWork } = applicant;
  const at = ago(test, applicant.ago);
  const document: ApplicationDocument = {
    ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "4 mm", unit: "cm", terms: "us" },
    ...{ timeZone: "Europe/Lisbon", experience: pastWork === "" ? "first" : "some", handle: "", pastWork },
  };
  await database().application.create({
    data: {
      ...{ callId, position, document, decision, agreementVersion: 1, agreedAt: at, createdAt: at },
      idempotencyKey: randomUUID(),
      contact: { create: { callId, name, email: `${addressOf(name)}@example.org` } },
      body: { create: { measurements: bodyNear(autumnSize(near), AUTUMN_PEOPLE.length + position) } },
    },
  });
}

/** A body near a size, to half a centimetre. */
function bodyNear(size: string, person: number): Record<string, number> {
  const { normal } = seededRandom(SEED + person);
  const body = saltmarshPattern.sizes.find(({ id }) => id === size)?.body ?? {};
  return Object.fromEntries(Object.entries(body).map(([id, cm]) => [id, Math.round(2 * (cm + normal())) / 2]));
}

async function layNotes(test: LaidTest, testers: ReadonlyMap<string, string>): Promise<void> {
  const { callId, revisionId, designerId } = test;
  for (const { by, at, heading, asks, answer, ...question } of AUTUMN_QUESTIONS) {
    const answered =
      answer === null ? {} : { answer, answeredAt: ago(test, question.ago - 1), answeredById: designerId };
    await database().question.create({
      data: {
        ...{ callId, revisionId, testerId: idOf(testers, by), place: { ...placeOf(heading, at) }, asks, ...answered },
        ...{ createdAt: ago(test, question.ago), idempotencyKey: randomUUID() },
      },
    });
  }
  for (const { by, at, heading, happened, did, ...trouble } of AUTUMN_TROUBLES) {
    await database().troubleSpot.create({
      data: {
        ...{ revisionId, testerId: idOf(testers, by), place: { ...placeOf(heading, at) }, happened, did },
        ...{ createdAt: ago(test, trouble.ago), idempotencyKey: randomUUID() },
      },
    });
  }
}

async function layCorrection(test: LaidTest, testers: ReadonlyMap<string, string>): Promise<void> {
  const { callId, revisionId, designerId } = test;
  const { at, sizes, text, answers } = AUTUMN_CORRECTION;
  const answeredAt = ago(test, AUTUMN_CORRECTION.ago - 1);
  await database().correction.create({
    data: {
      ...{ callId, revisionId, authorId: designerId, text, idempotencyKey: randomUUID() },
      ...{ sizes: sizes.map(autumnSize), place: { ...placeOf("Neck band", at) } },
      createdAt: ago(test, AUTUMN_CORRECTION.ago),
      answers: { create: answers.map(({ by, answer }) => ({ testerId: idOf(testers, by), answer, answeredAt })) },
    },
  });
}

/** The first passage after a heading that begins with these words, or has them within. */
function placeOf(heading: string, words: string): Place {
  const blocks = readInstructions(saltmarshPattern.instructions ?? "");
  const start = blocks.findIndex(({ kind, text }) => kind === "heading" && text.includes(heading));
  const found = blocks.slice(start + 1).find(({ text }) => text.includes(words));
  if (start < 0 || found === undefined) throw new Error(`the demonstration has no passage “${words}” in “${heading}”`);
  return found.place;
}

function idOf(testers: ReadonlyMap<string, string>, name: string): string {
  const id = testers.get(name);
  if (id === undefined) throw new Error(`the demonstration has no tester ${name}`);
  return id;
}

function ago({ now }: LaidTest, days: number): Date {
  return new Date(now.getTime() - days * DAY_MS);
}

/** `Véronique` -> `veronique`. */
function addressOf(name: string): string {
  return name
    .normalize("NFD")
    .replaceAll(/\P{ASCII}/gu, "")
    .toLowerCase();
}
