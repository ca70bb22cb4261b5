import "server-only";
import { randomUUID } from "node:crypto";
import type { CallDocument, PatternDocument } from "@/engine/pattern";
import { proveCall } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { addReports } from "./mutations";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";

const REASON = "Brought in as a document";

export async function storePattern(viewer: Viewer, document: PatternDocument): Promise<{ patternId: string }> {
  return await createPattern(viewer, { document, reason: REASON });
}

/** A pattern, its call, the places and every tester with her report: all of it or, where anything fails, nothing. */
export async function storeCall(
  viewer: Viewer,
  { call, title }: { call: CallDocument; title: string },
): Promise<{ patternId: string; callId: string }> {
  return await inTransaction(async (transaction) => {
    const document = call.pattern;
    const { patternId, revisionId } = await createPattern(viewer, { document, reason: REASON }, transaction);
    const pattern = await provePattern(transaction, { viewer, patternId, least: "owner" });
    const { callId } = await createCall(pattern, { title, places: call.places }, transaction);
    const access = await proveCall(transaction, { viewer, callId, least: "owner" });
    const reports = call.testers.map((tester) => ({ tester, typed: {}, submissionKey: randomUUID() }));
    await addReports(access, { revision: { revisionId, document }, reports }, transaction);
    return { patternId, callId };
  });
}
