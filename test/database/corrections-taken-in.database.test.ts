import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { openCorrections, publishedCorrections } from "@/features/testing/corrections/correction-data";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import { noteTakenIn, takeIn } from "@/features/testing/corrections/take-in-mutations";
import { database } from "@/server/database";
import { makeCall, type TestedCall } from "./make-tester";

let made: TestedCall;
let correctionId: string;

beforeEach(async () => {
  made = await makeCall();
  const { call, revisionId } = made;
  const idempotencyKey = randomUUID();
  const numbers = [{ count: "width", size: "small", was: 98, becomes: 104 }];
  const text = "Six stitches too few.";
  await publishCorrection(call, { text, revisionId, place: null, numbers, sizes: ["small"], idempotencyKey });
  correctionId = (await database().correction.findUniqueOrThrow({ where: { idempotencyKey } })).id;
});

describe("a correction in the next revision", () => {
  const ofPattern = () => ({ patternId: made.call.pattern.patternId });
  const newest = () => database().revision.findFirstOrThrow({ where: ofPattern(), orderBy: { number: "desc" } });

  it("stands in its grading, and what it says in its list of changes; then it is no longer open", async () => {
    const again = { correctionIds: [correctionId], baseNumber: 1 };
    expect(await openCorrections(made.call.pattern)).toMatchObject([{ callId: made.call.callId, many: 1 }]);
    expect(await takeIn(made.call, again)).toBe(2);
    const { number, document, reason } = await newest();
    expect([number, reason]).toEqual([2, "Six stitches too few."]);
    expect(document).toMatchObject({ grading: { width: { small: 104, large: 118 } } });
    expect(await publishedCorrections(made.call)).toMatchObject([{ takenIn: 2 }]);
    expect(await openCorrections(made.call.pattern)).toEqual([]);
    await expect(takeIn(made.call, again)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await expect(takeIn(made.call, { ...again, baseNumber: 2 })).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect((await newest()).number).toBe(2);
  });

  it("is noted where somebody wrote it in by hand, and is never another designer's", async () => {
    const other = await makeCall();
    const asked = { correctionIds: [correctionId], baseNumber: 1 };
    await expect(takeIn(other.call, asked)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await noteTakenIn(other.call, asked);
    const forged = { ...other.call, callId: made.call.callId };
    await expect(noteTakenIn(forged, asked)).rejects.toMatchObject({ code: "not-found" });
    expect(await publishedCorrections(made.call)).toMatchObject([{ takenIn: null }]);
    await noteTakenIn(made.call, asked);
    expect(await publishedCorrections(made.call)).toMatchObject([{ takenIn: 1 }]);
    expect((await newest()).number).toBe(1);
    await database().pattern.delete({ where: { id: made.call.pattern.patternId } });
  });
});
