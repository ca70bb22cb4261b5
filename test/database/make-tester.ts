import { randomUUID } from "node:crypto";
import type { CallDocument } from "@/engine/pattern";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { storeCall } from "@/features/testing/report/document-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { callDocument } from "../factories/call";
import { makeAccount } from "./make-account";

export interface TestedCall {
  readonly designer: Viewer;
  readonly call: CallAccess;
  readonly revisionId: string;
}

/** A call of an invented designer, at first with these testers brought in. */
export async function makeCall(document: CallDocument = callDocument([])): Promise<TestedCall> {
  const { id, name, email } = await makeAccount();
  const designer: Viewer = { accountId: id, name, email, unit: "cm" };
  const { callId, patternId } = await storeCall(designer, { call: document, title: "Invented call" });
  const revision = await database().revision.findFirstOrThrow({ where: { patternId } });
  return { designer, call: await callAccess(designer, callId, "owner"), revisionId: revision.id };
}

/** A tester of the call who has accepted and has access by link. */
export async function makeTester(
  { call: { callId }, revisionId }: TestedCall,
  given: { size?: string; unit?: "cm" | "in" } = {},
): Promise<TesterAccess> {
  const { size = "small", unit = "cm" } = given;
  const position = await database().tester.count({ where: { callId } });
  const { id: testerId } = await database().tester.create({
    data: {
      ...{ callId, revisionId, size, unit, position, code: `made-${randomUUID().slice(0, 8)}` },
      ...{ invitedAt: new Date(), invitationExpiresAt: new Date(Date.now() + 86_400_000), acceptedAt: new Date() },
    },
  });
  return { testerId, callId, accountId: null, linkVersion: 1 } as TesterAccess;
}
