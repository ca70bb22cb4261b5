import { randomUUID } from "node:crypto";
import fc from "fast-check";
import { expect, it } from "vitest";
import type { CallAccess } from "@/features/calls/access";
import { progressList, progressNeeds } from "../../src/features/testing/progress/progress-list-data";
import {
  NEEDS,
  progressQuerySchema,
  type Need,
  type ProgressQuery,
} from "../../src/features/testing/progress/progress-query";
import { PROGRESS_STATES, type Progress } from "../../src/features/testing/progress/tester-status-data";
import { database } from "@/server/database";
import { patternDocument } from "../factories/pattern";
import { makeCall } from "./make-tester";

const NOW = new Date("2026-11-26T12:00:00Z");
const DAY_MS = 24 * 60 * 60 * 1000;
const PEOPLE = 240;
const pattern = patternDocument();
const MEASURED = pattern.measurements.map(({ id }) => id);

/** Around now, and now and then exactly at what decides: so many days ago to the millisecond. */
const moment = fc.oneof(
  fc.integer({ min: -20 * DAY_MS, max: 5 * DAY_MS }),
  fc.constantFrom(0, -10 * DAY_MS, -10 * DAY_MS + 1),
);
const at = moment.map((ms) => new Date(NOW.getTime() + ms));
const INVITED_AT = new Date(NOW.getTime() - 30 * DAY_MS);
const UNANSWERED = { acceptedAt: null, declinedAt: null, withdrawnAt: null, stoppedAt: null, freedAt: null };
const BROUGHT_IN = { ...UNANSWERED, invitedAt: null, invitationExpiresAt: null };
const invited = (answer: fc.Arbitrary<Partial<Record<keyof typeof UNANSWERED, Date>>>) =>
  fc
    .record({ answer, invitationExpiresAt: at })
    .map(({ answer: said, ...ends }) => ({ ...UNANSWERED, invitedAt: INVITED_AT, ...ends, ...said }));

/** As the database takes them: one answer at most, only of who was invited, and stopped only after a yes. */
const invitation = fc.oneof(
  { weight: 5, arbitrary: invited(at.map((acceptedAt) => ({ acceptedAt }))) },
  { weight: 1, arbitrary: invited(at.map((acceptedAt) => ({ acceptedAt, stoppedAt: NOW }))) },
  { weight: 1, arbitrary: invited(at.map((acceptedAt) => ({ acceptedAt, stoppedAt: NOW, freedAt: NOW }))) },
  { weight: 1, arbitrary: invited(fc.constant({ declinedAt: NOW })) },
  { weight: 1, arbitrary: invited(fc.constant({ withdrawnAt: NOW })) },
  { weight: 2, arbitrary: invited(fc.constant({})) },
  { weight: 1, arbitrary: fc.constant(BROUGHT_IN) },
);
const day = fc.constantFrom("2026-11-20", "2026-11-25", "2026-11-26", "2026-11-27");

const tester = fc.record({
  size: fc.constantFrom("small", "large"),
  invitation,
  dates: fc.option(fc.record({ startOn: day, swatchBy: day, reportBy: day })),
  words: fc.array(
    fc.record({
      status: fc.constantFrom("track" as const, "behind" as const, "stuck" as const),
      createdAt: at,
    }),
    { maxLength: 2 },
  ),
  typed: fc.option(fc.dictionary(fc.constantFrom("swatch.0.stitches", "yarn.0", "fit"), fc.constantFrom("", "1"))),
  updatedAt: at,
  reports: fc.array(
    fc.record({
      read: fc.subarray(MEASURED),
      changed: fc.option(fc.subarray(MEASURED)),
      createdAt: at,
    }),
    { maxLength: 2, size: "small" },
  ),
  // A question about a number: not answered, answered, and read.
  asked: fc.constantFrom(null, {}, { answer: "", answeredAt: NOW }, { answer: "", answeredAt: NOW, seenAt: NOW }),
});

type MadeTester = ReturnType<typeof made>[number];

/** Of the seed with which every status occurs among half of them. */
const WITH_EVERY_STATUS = 3;

function made() {
  return [Number(process.env.SEED), WITH_EVERY_STATUS].flatMap((seed) =>
    fc.sample(tester, { numRuns: PEOPLE / 2, seed }),
  );
}

async function insert(people: readonly MadeTester[], callId: string, revisionId: string): Promise<void> {
  const rows = people.map((person, position) => ({ ...person, position, id: randomUUID() }));
  await database().tester.createMany({
    data: rows.map(({ id, position, size, dates, invitation: answer }) => ({
      ...{ id, callId, revisionId, position, size, code: `made-${position}`, ...answer },
      ...(dates === null ? {} : { dates }),
    })),
  });
  await database().milestone.createMany({
    data: rows.flatMap(({ id: testerId, words }) =>
      words.map((word) => ({ testerId, ...word, idempotencyKey: randomUUID() })),
    ),
  });
  await database().numberQuestion.createMany({
    data: rows.flatMap(({ id: testerId, asked }) =>
      asked === null
        ? []
        : [{ testerId, field: "hours", about: "1", asks: "?", idempotencyKey: randomUUID(), ...asked }],
    ),
  });
  await database().reportDraft.createMany({
    data: rows.flatMap(({ id: testerId, typed, updatedAt }) =>
      typed === null ? [] : [{ testerId, typed: { ...typed }, updatedAt }],
    ),
  });
  await database().report.createMany({
    data: rows.flatMap(({ id: testerId, size, reports }) =>
      reports.map(({ read, changed, createdAt }, version) => ({
        ...{ testerId, revisionId, version: version + 1, createdAt, idempotencyKey: randomUUID() },
        document: {
          ...{ size, swatches: [], yarn: [] },
          ...(changed === null ? {} : { changed }),
          readings: read.map((measurement) => ({ measurement, cm: 50 })),
        },
      })),
    ),
  });
}

async function publish(callId: string): Promise<void> {
  const dates = { applyUntil: "2026-11-01", startOn: "2026-11-02", swatchBy: "2026-11-25", reportBy: "2026-11-26" };
  const texts = { introduction: "", asks: "", yarn: "", tools: "", gives: "" };
  const document = { ...texts, timeZone: "America/Havana", dates, bodyAsked: [], fitBy: [], mostApplications: null };
  await database().listing.create({ data: { callId, publishedAt: NOW, applyUntil: NOW, document } });
}

/** So many spots that these sizes are never full, as the others are. */
async function open(callId: string, sizes: readonly string[]): Promise<void> {
  await database().place.updateMany({
    where: { callId, size: { in: [...sizes] } },
    data: { wanted: 2 * PEOPLE, most: 2 * PEOPLE },
  });
}

/** Everybody of a list, page after page. */
async function everybody(access: CallAccess, given: Partial<ProgressQuery>): Promise<readonly Progress[]> {
  const people: Progress[] = [];
  for (let page = 1; ; page += 1) {
    const query = progressQuerySchema.parse({ ...given, page });
    const list = await progressList(access, { pattern, query, now: NOW });
    people.push(...list.people);
    if (page >= list.pages) return people;
  }
}

const listed = ({ needs }: Progress): readonly Need[] => needs;

it.each(["published", "without days of its own"])(
  "a call %s lists its testers by the same status that each one's page tells",
  async (kind) => {
    const { call: access, revisionId } = await makeCall();
    if (kind === "published") await publish(access.callId);
    await insert(made(), access.callId, revisionId);
    await open(access.callId, ["small"]);
    const all = await everybody(access, {});
    expect(new Set(all.map(({ row }) => row.testerId)).size).toBe(PEOPLE);
    const urgency = all
      .map((each) => NEEDS.findIndex((need) => need === listed(each)[0]))
      .map((at) => (at < 0 ? 99 : at));
    expect(urgency).toEqual(urgency.toSorted((left, right) => left - right));

    const ids = (people: readonly Progress[]) => people.map(({ row }) => row.testerId).toSorted();
    for (const needs of NEEDS) {
      const expected = all.filter((each) => listed(each).includes(needs));
      expect(ids(await everybody(access, { needs })), needs).toEqual(ids(expected));
    }
    expect(ids(await everybody(access, { needs: "any" }))).toEqual(ids(all.filter((each) => listed(each).length > 0)));
    const small = all.filter(({ row }) => row.size === "small");
    expect(ids(await everybody(access, { size: "small" }))).toEqual(ids(small));

    const together = await progressNeeds(access, { pattern, now: NOW });
    const sum = (counted: typeof together) => counted.reduce((before, { many }) => before + many, 0);
    expect(sum(together)).toBe(all.filter((each) => listed(each).length > 0).length);
    for (const need of NEEDS)
      expect(sum(together.filter((each) => each.needs.includes(need))), need).toBe(
        all.filter((each) => listed(each).includes(need)).length,
      );
    const { counts, needs } = await progressList(access, { pattern, query: progressQuerySchema.parse({}), now: NOW });
    for (const { size, state, many } of counts)
      expect(many, `${size}, ${state}`).toBe(
        all.filter((each) => each.row.size === size && each.state === state).length,
      );
    expect(counts.reduce((sum, { many }) => sum + many, 0)).toBe(PEOPLE);
    for (const need of NEEDS)
      expect(needs[need] ?? 0, need).toBe(all.filter((each) => listed(each).includes(need)).length);
    // An open spot calls for somebody, a full size does not.
    const isAboutSpot = (each: Progress) =>
      listed(each).some((need) => ["stopped", "freed", "declined"].includes(need));
    expect(new Set(all.filter(isAboutSpot).map(({ row }) => row.size))).toEqual(new Set(["small"]));
    // The population is one that every status occurs in.
    expect(new Set(all.map(({ state }) => state))).toEqual(new Set(PROGRESS_STATES));
  },
);

it("a list tells no word and no report of testers whose words and reports were deleted", async () => {
  const { call: access, revisionId } = await makeCall();
  await open(access.callId, ["small", "large"]);
  await insert(made(), access.callId, revisionId);
  const ofCall = { tester: { callId: access.callId } };
  await database().milestone.deleteMany({ where: ofCall });
  await database().report.deleteMany({ where: ofCall });
  const all = await everybody(access, {});
  const { counts, needs } = await progressList(access, { pattern, query: progressQuerySchema.parse({}), now: NOW });
  expect(needs.stuck).toBeUndefined();
  expect(needs.behind).toBeUndefined();
  expect((needs.stopped ?? 0) + (needs.freed ?? 0)).toBe(all.filter(({ state }) => state === "stopped").length);
  expect(counts.filter(({ state }) => state.startsWith("reported"))).toEqual([]);
});
