import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import type { CallAccess } from "@/features/calls/access";
import { photosOfTrouble, readProblemPhotos } from "@/features/testing/photos/problem-photo-data";
import { placeNotes } from "@/features/testing/questions/data";
import { answerQuestions, askQuestion, reportTrouble } from "@/features/testing/questions/mutations";
import { askedPlaces, pagesOfPlace, troubledPlaces } from "@/features/testing/questions/place-notes-data";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { makeViewer } from "./make-account";
import { newCall, newestRevision, placeAt, saidQuery, testerOf, TEXT } from "./questions-call";

let owner: CallAccess;
let revisionId: string;
let ann: TesterAccess;
let bea: TesterAccess;

const sent = (change: object = {}) => ({ revisionId, place: placeAt(1), idempotencyKey: randomUUID(), ...change });

beforeEach(async () => {
  owner = await newCall(await makeViewer());
  ann = await testerOf(owner, "ann");
  bea = await testerOf(owner, "bea");
  revisionId = await newestRevision(owner.callId);
});

describe("what is said of a text by many", () => {
  /** Seventy questions at one place and one at another, half of the seventy answered; by testers of one size. */
  async function manySaid(): Promise<void> {
    const ids = Array.from({ length: 70 }, () => randomUUID());
    await database().question.createMany({
      data: ids.map((id, at) => ({
        ...{ id, callId: owner.callId, testerId: ann.testerId, revisionId, idempotencyKey: id, asks: `Question ${at}` },
        ...{ place: { ...placeAt(1) }, createdAt: new Date(Date.UTC(2026, 0, 1, 0, at)) },
      })),
    });
    await answerQuestions(owner, { questionIds: ids.slice(0, 35), answer: "So.", seenAt: null });
    await askQuestion(bea, { ...sent({ place: placeAt(2) }), asks: "Elsewhere?" });
  }

  it("is shown place by place, a few of each and how many there are", async () => {
    await manySaid();
    const page = await askedPlaces(owner, { instructions: TEXT }, saidQuery());
    expect(page).toMatchObject({ waiting: 36, page: 1, pages: 1 });
    const [first, second] = page.places;
    expect(first?.threads.map(({ answer, many, ids, shown }) => [answer, many, ids.length, shown.length])).toEqual([
      ["So.", 35, 35, 5],
      [null, 35, 35, 5],
    ]);
    expect(first?.threads[0]?.shown.map(({ asks }) => asks)).toEqual([0, 1, 2, 3, 4].map((at) => `Question ${at}`));
    expect(second?.threads).toMatchObject([{ answer: null, many: 1, shown: [{ asks: "Elsewhere?" }] }]);
  });

  it("is all to be read at its own place, page by page", async () => {
    await manySaid();
    const [{ key } = { key: "" }] = (await askedPlaces(owner, { instructions: TEXT }, saidQuery())).places;
    const read = async (page: number) => {
      const { places } = await askedPlaces(owner, { instructions: TEXT }, saidQuery({ at: key, page }));
      expect(places).toHaveLength(1);
      return places.flatMap(({ threads }) => threads);
    };
    expect(pagesOfPlace(await read(1))).toBe(2);
    const asks = [...(await read(1)), ...(await read(2))].flatMap(({ shown }) =>
      shown.map((question) => question.asks),
    );
    expect(new Set(asks).size).toBe(70);
  });

  it("has beside a trouble spot what its tester photographed of their problems", async () => {
    await reportTrouble(ann, { ...sent(), happened: "Oh", did: "" });
    await reportTrouble(ann, { ...sent(), happened: "And then", did: "" });
    const [oh = "", andThen = ""] = (await placeNotes(ann)).troubles.map(({ troubleId }) => troubleId);
    interface Change {
      readonly view?: "front";
      readonly state?: "received";
      readonly note?: string;
      readonly troubleId?: string;
    }
    const photo = async (testerId: string, change: Change) =>
      await database().photo.create({
        data: { id: randomUUID(), testerId, view: "problem", state: "ready", bytes: 1, ...change },
      });
    const hole = await photo(ann.testerId, { note: "A hole" });
    const stain = await photo(ann.testerId, { troubleId: andThen });
    await photo(ann.testerId, { view: "front" });
    await photo(ann.testerId, { state: "received" });
    await photo(bea.testerId, {});
    const { places } = await troubledPlaces(owner, { instructions: TEXT }, saidQuery());
    const shown = places.flatMap(({ troubles }) => troubles.shown.map(({ testerId }) => testerId));
    const photos = await readProblemPhotos(owner, shown);
    const idsAt = (id: string) => photosOfTrouble(photos, { id, ...ann }).map(({ photoId }) => photoId);
    // One that shows no trouble spot in particular stands beside each.
    expect([idsAt(oh), idsAt(andThen)]).toEqual([[hole.id], [hole.id, stain.id]]);
    expect(photos.map(({ note }) => note)).toEqual(["A hole", ""]);
    expect(await readProblemPhotos(await newCall(await makeViewer("Sam")), shown)).toEqual([]);
  });

  it("has first the place where most testers stumbled, each counted once, and by size", async () => {
    for (const tester of [ann, ann, bea])
      await reportTrouble(tester, { ...sent({ place: placeAt(2) }), happened: "Oh", did: "" });
    for (const _ of [1, 2, 3, 4]) await reportTrouble(ann, { ...sent(), happened: "Again", did: "" });
    const { places } = await troubledPlaces(owner, { instructions: TEXT }, saidQuery());
    expect(places.map(({ troubles: { testers, many } }) => [testers, many])).toEqual([
      [2, 3],
      [1, 4],
    ]);
    expect(Object.values(places[0]?.troubles.sizes ?? {}).reduce((sum, many) => sum + many, 0)).toBe(2);
  });

  it("is told to no stranger, whatever proof they forge", async () => {
    await manySaid();
    await reportTrouble(ann, { ...sent(), happened: "Oh", did: "" });
    const { accountId } = await makeViewer();
    const forged = { ...owner, pattern: { ...owner.pattern, accountId } };
    expect((await askedPlaces(forged, { instructions: TEXT }, saidQuery())).places).toEqual([]);
    expect((await troubledPlaces(forged, { instructions: TEXT }, saidQuery())).places).toEqual([]);
  });
});
