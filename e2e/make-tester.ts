import { randomUUID } from "node:crypto";
import type { BrowserContext } from "@playwright/test";
import type { PatternDocument } from "../src/engine/pattern";
import { testerCookieName } from "../src/features/testing/home/tester-cookie-name";
import { linkKey } from "../src/server/link-key";
import { makeDesigner, query, type Designer } from "./designer";

export interface MadeTester {
  readonly testerId: string;
  readonly callId: string;
  /** The owner of the call. */
  readonly designer: Designer;
}

/** A tester of an invented call who has accepted, without an account. */
export async function makeTester(
  pattern: PatternDocument,
  { size = pattern.sizes[0]?.id ?? "", unit = "cm" }: { size?: string; unit?: "cm" | "in" } = {},
): Promise<MadeTester> {
  const designer = await makeDesigner();
  const [patternId, revisionId, callId, testerId] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()];
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  await query("INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')", [
    patternId,
    designer.accountId,
  ]);
  await query("INSERT INTO revision (id, pattern_id, number, document, reason) VALUES ($1, $2, 1, $3, 'First')", [
    revisionId,
    patternId,
    JSON.stringify(pattern),
  ]);
  await query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'Invented call')", [callId, patternId]);
  await query(
    `INSERT INTO tester (id, call_id, code, position, size, unit, revision_id, invited_at, invitation_expires_at, accepted_at)
     VALUES ($1, $2, 'tester-1', 0, $3, $4, $5, now(), now() + interval '1 day', now())`,
    [testerId, callId, size, unit, revisionId],
  );
  return { testerId, callId, designer };
}

/** Gives a browser access to a tester's pages, as the link would. */
export async function letIn(context: BrowserContext, { testerId }: Pick<MadeTester, "testerId">): Promise<void> {
  const value = linkKey("tester", { id: testerId, version: 1 });
  await context.addCookies([{ name: testerCookieName(testerId), value, url: String(process.env.NEXTAUTH_URL) }]);
}

/** Stores a draft, field → text. */
export async function typeReport(
  { testerId }: Pick<MadeTester, "testerId">,
  typed: Readonly<Record<string, string>>,
): Promise<void> {
  await query("INSERT INTO report_draft (tester_id, typed) VALUES ($1, $2)", [testerId, JSON.stringify(typed)]);
}
