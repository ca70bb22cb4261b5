import { Client } from "pg";
import { beforeAll, describe, expect, it } from "vitest";
import { database, pool } from "@/server/database";
import { environment } from "@/server/environment";
import { dump, loadDump } from "./dumps/load-dump";

beforeAll(async () => {
  const client = new Client({ connectionString: environment().DATABASE_URL });
  await client.connect();
  await loadDump(client);
  await client.end();
});

function accountOf(name: string) {
  return database().account.findFirstOrThrow({ where: { name } });
}

function callOf(title: string) {
  return database().call.findFirstOrThrow({ where: { title } });
}

/** The sentence or the key with which PostgreSQL refuses a statement. */
async function refusal(statement: string): Promise<string> {
  const error: unknown = await pool()
    .query(statement)
    .then(() => new Error("not refused"))
    .catch((refused: unknown) => refused);
  if (!(error instanceof Error)) throw error;
  return "constraint" in error && typeof error.constraint === "string" ? error.constraint : error.message;
}

describe("a helper’s account that is deleted", () => {
  it("leaves what they saved and decided without a name, and takes their part and their late edits", async () => {
    const { id } = await accountOf("Kofi Mensah");
    const saved = await database().revision.findFirstOrThrow({ where: { createdById: id } });
    const decision = await database().decision.findFirstOrThrow();
    await database().decision.updateMany({ where: { reportId: decision.reportId }, data: { decidedById: id } });
    await database().account.delete({ where: { id } });
    expect(await database().revision.findUnique({ where: { id: saved.id } })).toEqual({ ...saved, createdById: null });
    expect(await database().decision.findFirst({ where: { reportId: decision.reportId } })).toEqual(decision);
    expect(await database().membership.count({ where: { accountId: id } })).toBe(0);
    expect(await database().conflictingDraft.count()).toBe(0);
  });
});

describe("an owner’s account", () => {
  it("stays as long as it owns a pattern, for nobody could reach that any more", async () => {
    const { id } = await accountOf("Tomas Lind");
    expect(await refusal(`DELETE FROM account WHERE id = '${id}'`)).toBe(
      "a pattern keeps its owner: delete the pattern first",
    );
    expect(await database().membership.count({ where: { accountId: id } })).toBe(2);
    await database().pattern.deleteMany({ where: { memberships: { some: { accountId: id } } } });
    await database().account.delete({ where: { id } });
    expect(await database().call.count({ where: { title: "Closed test (invented)" } })).toBe(0);
  });
});

describe("what others rest on", () => {
  it("is not deleted alone: a revision that reports followed, and an agreement that somebody agreed to", async () => {
    const revisions = ["DELETE FROM revision WHERE id IN (SELECT revision_id FROM", ")"] as const;
    expect(await refusal(revisions.join(" tester WHERE revision_id IS NOT NULL"))).toMatch(/_fkey$/);
    expect(await refusal(revisions.join(" report"))).toMatch(/_fkey$/);
    expect(await refusal("DELETE FROM agreement")).toBe("application_call_id_agreement_version_fkey");
    expect(await database().revision.count()).toBe((dump.counts["revision"] ?? 0) - 2);
  });
});

describe("an application that is deleted", () => {
  it("takes its contact and its body, and leaves the test that came of it", async () => {
    const { callId, id, tester } = await database().application.findFirstOrThrow({
      where: { tester: { acceptedAt: { not: null }, reports: { some: {} } } },
      include: { tester: true },
    });
    await database().application.delete({ where: { id } });
    expect(await database().applicationContact.count({ where: { applicationId: id } })).toBe(0);
    expect(await database().applicationBody.count({ where: { applicationId: id } })).toBe(0);
    expect(await database().tester.findFirst({ where: { callId, id: tester?.id } })).toMatchObject({
      applicationId: null,
    });
  });
});

describe("a tester who is deleted", () => {
  it("takes their reports, and leaves their questions without a name for the other testers", async () => {
    const { id, questions, reports } = await database().tester.findFirstOrThrow({
      where: { questions: { some: {} } },
      include: { questions: true, reports: true },
    });
    await database().tester.delete({ where: { id } });
    expect(await database().report.count({ where: { id: { in: reports.map((report) => report.id) } } })).toBe(0);
    const ids = questions.map((question) => question.id);
    const left = await database().question.findMany({ where: { id: { in: ids } } });
    expect(left.map(({ testerId }) => testerId)).toEqual(questions.map(() => null));
  });
});

describe("a call that is deleted", () => {
  it("takes all that was said in it, and leaves the revision that was made from it with its evidence", async () => {
    const { id, patternId } = await callOf("Imported test (invented)");
    await database().call.delete({ where: { id } });
    expect(await database().tester.count({ where: { callId: id } })).toBe(0);
    expect(await database().analysis.count({ where: { callId: id } })).toBe(0);
    expect(await database().revision.count({ where: { patternId } })).toBe(3);
    expect(await database().revisionEvidence.findMany()).toMatchObject([{ callId: null }]);
  });
});

describe("a pattern that is deleted", () => {
  it("takes its calls with every application, agreement, tester and question, and nothing of another pattern", async () => {
    const { id: callId, patternId } = await callOf("Vest test (invented)");
    const others = await database().report.count({ where: { tester: { callId: { not: callId } } } });
    await database().pattern.delete({ where: { id: patternId } });
    for (const table of ["revision", "call", "membership"])
      expect((await pool().query(`SELECT FROM ${table} WHERE pattern_id = $1`, [patternId])).rowCount).toBe(0);
    for (const table of ["application", "agreement", "tester", "question", "place"])
      expect((await pool().query(`SELECT FROM ${table} WHERE call_id = $1`, [callId])).rowCount).toBe(0);
    expect(await database().report.count()).toBe(others);
  });
});
