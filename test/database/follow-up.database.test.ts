import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import type { PatternDocument } from "@/engine/pattern";
import type { PatternAccess } from "@/features/patterns/access";
import {
  noteInstructionFixes,
  reopenFix,
  saveCorrectedRevision,
  signOffSizes,
  tickOffFix,
  withdrawSignOff,
} from "@/features/patterns/follow-up/follow-up-mutations";
import { openInstructionFixes, tickedOffFixes } from "@/features/patterns/follow-up/instruction-fix-data";
import { correctedSizeStandings } from "@/features/patterns/follow-up/retest-data";
import { latestRevision } from "@/features/patterns/data";
import { saveRevision } from "@/features/patterns/mutations";
import { takeApart } from "@/features/calls/report-schema";
import { database } from "@/server/database";
import { callDocument, reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeAccount } from "./make-account";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

const TEXT = "Cast on 104 (118) stitches.\n\nWork 100 (110) rows.";
const PATTERN = patternDocument({ instructions: TEXT });
const REGRADED: PatternDocument = { ...PATTERN, grading: { ...PATTERN.grading, width: { small: 102, large: 118 } } };
const FIX = { count: "width", size: "small", was: 104, becomes: 98 };

let made: TestedCall;
let access: PatternAccess;
/** A helper who may only look, another designer, and a tester with an account. */
let looker: PatternAccess;
let others: readonly PatternAccess[];

async function partOf(role?: "viewer" | "editor"): Promise<PatternAccess> {
  const { id: accountId } = await makeAccount();
  const { patternId } = access;
  if (role !== undefined) await database().membership.create({ data: { patternId, accountId, role } });
  return { ...access, accountId };
}

beforeEach(async () => {
  made = await makeCall(callDocument([], { pattern: PATTERN }));
  access = made.call.pattern;
  looker = await partOf("viewer");
  const testing = await partOf();
  const { testerId } = await makeTester(made);
  await database().tester.update({ where: { id: testerId }, data: { accountId: testing.accountId } });
  const otherDesigner = { ...access, accountId: (await makeCall()).designer.accountId };
  others = [otherDesigner, testing];
});

describe("what is to be fixed in the instructions", () => {
  const open = async (by = access) => await openInstructionFixes(by, (await latestRevision(access)).document);

  async function note(fix = FIX): Promise<string> {
    const { revisionId, document: pattern } = await latestRevision(access);
    await noteInstructionFixes(database(), { revisionId, pattern, fixes: [fix] });
    return (await database().instructionFix.findFirstOrThrow({ where: { revisionId, ...fix } })).id;
  }

  async function save(document: PatternDocument): Promise<void> {
    const { number: baseNumber } = await latestRevision(access);
    await saveRevision(access, { document, reason: "Why", baseNumber });
  }

  it("stands at its passage in every later revision, until the text gives another number there", async () => {
    await note();
    expect(await open()).toMatchObject([
      { ...FIX, gives: "wrong", passages: [{ text: "Cast on 104 (118) stitches." }] },
    ]);
    await save({ ...REGRADED, instructions: `Read this first.\n\n${TEXT.replace("Cast on", "Loosely cast on")}` });
    expect(await open()).toMatchObject([{ passages: [{ text: "Loosely cast on 104 (118) stitches." }] }]);
    await save({ ...PATTERN, instructions: TEXT.replace("104", "98") });
    expect(await open()).toEqual([]);
  });

  it("stands where the right number is, if no passage has the wrong one, until that passage changes", async () => {
    await note({ count: "height", size: "large", was: 112, becomes: 110 });
    expect(await open()).toMatchObject([{ gives: "right", passages: [{ text: "Work 100 (110) rows." }] }]);
    await save({ ...PATTERN, instructions: TEXT.replace("rows.", "rows and no more.") });
    expect(await open()).toEqual([]);
  });

  it("has no passage where the text has neither number, and goes with any other text", async () => {
    await note({ count: "height", size: "large", was: 7, becomes: 9 });
    expect(await open()).toMatchObject([{ gives: "none", passages: [] }]);
    await save({ ...PATTERN, instructions: `${TEXT}\n\nWork 9 more rows.` });
    expect(await open()).toEqual([]);
  });

  it("is ticked off once, by those who may edit the pattern alone", async () => {
    const fixId = await note();
    expect(await open(looker)).toHaveLength(1);
    for (const by of others) expect(await open(by)).toEqual([]);
    for (const by of [looker, ...others])
      await expect(tickOffFix(by, fixId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await open()).toHaveLength(1);
    await tickOffFix(access, fixId);
    expect(await open()).toEqual([]);
    await expect(tickOffFix(access, fixId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    const row = await database().instructionFix.findUniqueOrThrow({ where: { id: fixId } });
    expect(row).toMatchObject({ doneById: access.accountId, doneAt: expect.any(Date) as Date });
  });

  it("is reopened by those who may edit the pattern alone, and told by whom it was ticked off until then", async () => {
    const fixId = await note();
    await expect(reopenFix(access, fixId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await tickOffFix(access, fixId);
    const tickedOff = { ...FIX, fixId, doneBy: expect.any(String) as string };
    for (const by of [access, looker]) expect(await tickedOffFixes(by)).toMatchObject([tickedOff]);
    for (const by of others) expect(await tickedOffFixes(by)).toEqual([]);
    for (const by of [looker, ...others])
      await expect(reopenFix(by, fixId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await reopenFix(access, fixId);
    expect(await open()).toMatchObject([FIX]);
    expect(await tickedOffFixes(access)).toEqual([]);
  });
});

describe("a corrected size", () => {
  const standings = async (by = access) => await correctedSizeStandings(by, PATTERN);

  beforeEach(async () => {
    const revision = { document: REGRADED, reason: "Four more", baseNumber: 1 };
    await saveCorrectedRevision(access, PATTERN, revision);
  });

  /** Somebody of size S measures this on the newest revision. */
  async function report(measured: Readonly<Record<string, number>>): Promise<void> {
    const { testerId } = await makeTester(made);
    const { revisionId } = await latestRevision(access);
    const { report: document } = takeApart(reader("t", measured));
    await database().report.create({
      data: { testerId, version: 1, revisionId, document, idempotencyKey: randomUUID() },
    });
  }

  it("is to be tested again until a report on its revision measures what was corrected", async () => {
    expect(await standings()).toMatchObject([
      { size: "small", measurements: ["bust"], revisionNumber: 2, status: "due" },
    ]);
    await report({ length: 40 });
    expect(await standings()).toMatchObject([{ status: "due" }]);
    await report({ bust: 101 });
    expect(await standings()).toMatchObject([{ status: "retested" }]);
    expect(await standings(looker)).toMatchObject([{ status: "retested" }]);
    for (const by of others) expect(await standings(by)).toEqual([]);
  });

  it("is not confirmed while the newest results find it different", async () => {
    await report({ bust: 120 });
    const { revisionId } = await latestRevision(access);
    const cells = [{ size: "small", measurement: "bust", verdict: "off" }];
    await database().analysis.create({
      data: { ...analysis(revisionId), callVersion: 90, differences: { cells } },
    });
    expect(await standings()).toMatchObject([{ status: "off" }]);
    await database().analysis.create({
      data: { ...analysis(revisionId), callVersion: 91, differences: { cells: [{ ...cells[0], verdict: "holds" }] } },
    });
    expect(await standings()).toMatchObject([{ status: "retested" }]);
  });

  const analysis = (revisionId: string) =>
    ({ callId: made.call.callId, revisionId, engineVersion: "e", status: "done" }) as const;

  it("is signed off by name and date by those who may edit the pattern alone, and that can be taken back", async () => {
    const signed = { sizes: ["small"], checkedBy: "Ada Marsh" };
    for (const by of [looker, ...others]) {
      await expect(signOffSizes(by, signed)).rejects.toMatchObject({ code: "changed-meanwhile" });
    }
    await expect(signOffSizes(access, { ...signed, sizes: ["large"] })).rejects.toMatchObject({
      code: "changed-meanwhile",
    });
    await signOffSizes(access, signed);
    const checked = { status: "checked", checkedBy: "Ada Marsh", checkedAt: expect.any(Date) as Date };
    expect(await standings()).toMatchObject([checked]);
    for (const by of [looker, ...others]) await withdrawSignOff(by, { sizes: ["small"], revisionNumber: 2 });
    expect(await standings()).toMatchObject([checked]);
    await withdrawSignOff(access, { sizes: ["small"], revisionNumber: 2 });
    expect(await standings()).toMatchObject([{ status: "due", checkedBy: null }]);
  });

  it("is to be tested again after another correction, even if somebody had signed it off", async () => {
    await signOffSizes(access, { sizes: ["small"], checkedBy: "Ada Marsh" });
    const revision = { document: PATTERN, reason: "Back", baseNumber: 2 };
    await saveCorrectedRevision(access, REGRADED, revision);
    expect(await standings()).toMatchObject([
      { revisionNumber: 3, status: "due" },
      { revisionNumber: 2, status: "checked" },
    ]);
  });

  it("goes with its pattern, and a signature stays when the account that noted it goes", async () => {
    const helper = await partOf("editor");
    const { patternId } = access;
    await signOffSizes(helper, { sizes: ["small"], checkedBy: "Ada Marsh" });
    await database().account.delete({ where: { id: helper.accountId } });
    expect(await standings()).toMatchObject([{ status: "checked", checkedBy: "Ada Marsh" }]);
    await database().pattern.delete({ where: { id: patternId } });
    expect(await database().correctedSize.count({ where: { revision: { patternId } } })).toBe(0);
  });
});
