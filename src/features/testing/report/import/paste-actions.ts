"use server";

import { z } from "zod";
import type { PatternDocument, Places } from "@/engine/pattern";
import { MAX_COMMENT_LENGTH, readReportTable, reportChoicesSchema, type ReadTester } from "@/engine/tables";
import { callAccess, proveCall, type CallAccess } from "@/features/calls/access";
import { callTesters } from "@/features/calls/data";
import { createCall } from "@/features/calls/mutations";
import { patternAccess, type PatternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { viewerAction } from "@/server/action";
import { idempotencyKey } from "@/server/idempotency-key";
import { inTransaction, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { parseTableText } from "@/engine/tables";
import { addReports } from "../mutations";

const pastedSchema = z.strictObject({
  patternId: z.string(),
  /** Null creates a new call for them. */
  callId: z.string().nullable(),
  text: z.string().max(900_000),
  choices: reportChoicesSchema,
  /** The designer's confirmation that the questioned numbers are correct. */
  confirmed: z.boolean(),
  /** Made once for a pasted table, so that sending it twice stores it once. */
  tableKey: z.uuid(),
});

export type PastedReports = z.infer<typeof pastedSchema>;

export type AddedReports =
  { readonly status: "added"; readonly callId: string } | { readonly status: "failed"; readonly says: string };

/** Adds the testers of a pasted table to a call: reads it as the screen did, and saves nothing unless all of it can be read. */
export const addPastedReports = viewerAction(async (viewer, input: PastedReports): Promise<AddedReports> => {
  const pasted = pastedSchema.safeParse(input);
  if (!pasted.success)
    return failed("The table is too long to be sent at once: at most 900,000 characters. Paste part of it.");
  const { patternId, callId, text, choices, confirmed, tableKey } = pasted.data;
  const access = await patternAccess(viewer, patternId, "editor");
  const revision = await latestRevision(access);
  const chosen = callId === null ? null : await callAccess(viewer, callId, "editor");
  const taken = new Set(chosen === null ? [] : (await callTesters(chosen)).map(({ code }) => code));
  const table = readReportTable(parseTableText(text), choices, { pattern: revision.document, taken });
  if (!table.ok) return failed(table.faults[0]?.message ?? "The table cannot be read.");
  if (table.questions.length > 0 && !confirmed)
    return failed("Some numbers look unusual. Fix them, or confirm that they are correct.");
  const reports = table.testers.map((read) => ({
    ...reportOf(read),
    idempotencyKey: idempotencyKey(tableKey, String(read.row)),
  }));
  const call = await inTransaction(async (transaction) => {
    const into =
      chosen ?? (await newCall(transaction, { viewer, access, pattern: revision.document, testers: table.testers }));
    await addReports(into, { revision, reports }, transaction);
    return into;
  });
  return { status: "added", callId: call.callId };
});

function failed(says: string): AddedReports {
  return { status: "failed", says };
}

interface NewCall {
  readonly viewer: Viewer;
  readonly access: PatternAccess;
  readonly pattern: PatternDocument;
  readonly testers: readonly ReadTester[];
}

/** Creates a call for a test that is over: its places are the testers it has. */
async function newCall(transaction: Connection, { viewer, access, pattern, testers }: NewCall): Promise<CallAccess> {
  const places: Places = Object.fromEntries(
    pattern.sizes.map(({ id }) => {
      const count = testers.filter(({ tester }) => tester.size === id).length;
      return [id, { least: count, wanted: count }];
    }),
  );
  const { callId } = await createCall(access, { title: `Test of ${pattern.name}`, places }, transaction);
  return await proveCall(transaction, { viewer, callId, least: "editor" });
}

function reportOf({ tester, name, comment, typed }: ReadTester) {
  const note = comment.length > MAX_COMMENT_LENGTH ? `${comment.slice(0, MAX_COMMENT_LENGTH - 1)}…` : comment;
  return { tester, typed, note, ...(name === null ? {} : { name }) };
}
