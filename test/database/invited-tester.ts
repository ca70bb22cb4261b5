import { callAccess, type CallAccess } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { patternAccess } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { invitationLink, invitedAccess, type InvitedAccess } from "@/features/recruiting/invitations/access";
import { inviteByHand } from "../../src/features/testing/progress/progress-mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { patternDocument } from "../factories/pattern";

export const CHOICES = { unit: "in", terms: "uk", timeZone: "Asia/Tokyo" } as const;
export const WEEK = 7 * 24 * 60 * 60 * 1_000;

/** An open call of the test pattern, one place a size, to which many may be invited. */
export async function makeCall(owner: Viewer): Promise<CallAccess> {
  const { patternId } = await createPattern(owner, { document: patternDocument(), reason: "first" });
  const pattern = await patternAccess(owner, patternId, "owner");
  const places = { small: { least: 1, wanted: 1, most: 20 }, large: { least: 1, wanted: 1, most: 20 } };
  const { callId } = await inTransaction((connection) => createCall(pattern, { title: "Test", places }, connection));
  return await callAccess(owner, callId, "owner");
}

/** Somebody who is invited directly, or the designer. */
export async function inviteTo(access: CallAccess, self: Viewer | null = null): Promise<string> {
  const { testerId } = await inviteByHand(access, {
    ...{ name: "Bea", email: "bea@example.org", size: "small" },
    ...{ expiresAt: new Date(Date.now() + WEEK), self },
  });
  return testerId;
}

/** Access by the current link. */
export async function held(testerId: string): Promise<InvitedAccess> {
  const { linkVersion } = await rowOf(testerId);
  return await invitedAccess(invitationLink({ testerId, linkVersion }));
}

export function rowOf(testerId: string) {
  return database().tester.findUniqueOrThrow({ where: { id: testerId } });
}
