import { randomUUID } from "node:crypto";
import fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import {
  applicationBoard,
  boardCounts,
  chosenApplications,
} from "../../src/features/recruiting/applications/list/application-board";
import {
  APPLICATIONS_A_PAGE,
  chosenPage,
  neighbourIds,
} from "../../src/features/recruiting/applications/list/application-list-data";
import { callApplications } from "@/features/recruiting/applications/data";
import { listQuerySchema, type ListQuery } from "../../src/features/recruiting/applications/list/list-query";
import { database } from "@/server/database";
import { applicantsDocument } from "../factories/applicants";
import { makeViewer } from "./make-account";
import { NOW, placesCall, type PlacesCall } from "./places-call";
import { callAccess } from "@/features/calls/access";

const PEOPLE = 160;
const { pattern } = applicantsDocument();
const places = Object.fromEntries(pattern.sizes.map(({ id }) => [id, { least: 1, wanted: 2 }]));

/** Bodies around the sizes' 90, 98 and 108 cm, among them those that are just within reach, just not, or as near to two. */
const bust = fc.oneof(
  fc.double({ min: 70, max: 130, noNaN: true }),
  fc.constantFrom(74, 82, 90, 94, 98, 103, 106, 106.0001, 108, 118, 118.0001, 128),
);
const application = fc.record({
  bust: fc.option(bust, { freq: 8 }),
  decision: fc.option(fc.constantFrom("yes" as const, "maybe" as const, "no" as const)),
  withdrawnAt: fc.oneof({ weight: 7, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: fc.constant(NOW) }),
});

let made: PlacesCall;

beforeAll(async () => {
  made = await placesCall(Object.fromEntries(pattern.sizes.map(({ id }) => [id, 2])));
  const people = fc
    .sample(application, { numRuns: PEOPLE, seed: Number(process.env.SEED) })
    .map((each, position) => ({ ...each, position, id: randomUUID() }));
  const said = { forAnother: false, yarn: "", tool: "", unit: "cm", terms: "uk", timeZone: null, handle: "" };
  await database().application.createMany({
    data: people.map(({ id, position, decision, withdrawnAt }) => ({
      ...{ id, callId: made.callId, position, decision, withdrawnAt, agreementVersion: 1, agreedAt: NOW },
      ...{ idempotencyKey: id, document: { ...said, accepts: null, prefers: [], experience: "some", pastWork: "" } },
    })),
  });
  await database().applicationBody.createMany({
    data: people.flatMap(({ id: applicationId, bust: cm }) =>
      cm === null ? [] : [{ applicationId, measurements: { bust: cm } }],
    ),
  });
});

const DECISIONS = ["all", "undecided", "yes", "maybe", "no", "withdrawn"] as const;
const SIZES = [undefined, ...pattern.sizes.map(({ id }) => id), "no such size"];

it.each([{ fitBy: ["bust"] }, { fitBy: [] }])(
  "lists and counts the same applications as one who reads them all, by $fitBy",
  async ({ fitBy }) => {
    const board = { pattern, places, fitBy };
    const all = applicationBoard(await callApplications(made.access), board);
    expect(all).toHaveLength(PEOPLE);
    for (const decision of DECISIONS)
      for (const size of SIZES) {
        const query: ListQuery = { decision, size, page: 1 };
        const expected = chosenApplications(all, query).map(({ applicationId }) => applicationId);
        const page = await chosenPage(made.access, { ...board, query });
        expect(page.ids, `${decision}, ${size}`).toEqual(expected.slice(0, APPLICATIONS_A_PAGE));
        expect(page.pages).toBe(Math.max(1, Math.ceil(expected.length / APPLICATIONS_A_PAGE)));
        expect(page.counts).toEqual(boardCounts(all, board));
      }
    const last = await chosenPage(made.access, { ...board, query: listQuerySchema.parse({ page: "999" }) });
    const standing = chosenApplications(all, listQuerySchema.parse({})).map(({ applicationId }) => applicationId);
    expect(last.ids).toEqual(standing.slice((last.pages - 1) * APPLICATIONS_A_PAGE));
  },
);

it("leads from one application to those beside it in the same list, and from one outside it to the first", async () => {
  const board = { pattern, places, fitBy: ["bust"] };
  const query = listQuerySchema.parse({ decision: "yes" });
  const all = applicationBoard(await callApplications(made.access), board);
  const ids = chosenApplications(all, query).map(({ applicationId }) => applicationId);
  for (const [index, id] of ids.entries())
    expect(await neighbourIds(made.access, id, { ...board, query })).toEqual({
      previous: ids[index - 1] ?? null,
      next: ids[index + 1] ?? null,
    });
  const outside = all.find(({ decision }) => decision === "no")?.applicationId ?? randomUUID();
  expect(await neighbourIds(made.access, outside, { ...board, query })).toEqual({ previous: null, next: ids[0] });
});

it("shows nothing of another designer's call", async () => {
  const other = await placesCall({}, { owner: await makeViewer() });
  const forged = { ...made.access, pattern: other.access.pattern };
  const asked = { pattern, places, fitBy: ["bust"], query: listQuerySchema.parse({}) };
  expect((await chosenPage(forged, asked)).ids).toEqual([]);
  await expect(callAccess(other.owner, made.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
});
