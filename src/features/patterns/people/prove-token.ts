import "server-only";
import { consumeAttempt, refundAttempt, type Limit } from "@/server/rate-limit";
import { invitationAccess, type InvitationAccess } from "../access";

const GUESSES_BY_ADDRESS: Limit = { name: "invitation-address", tries: 40, withinSeconds: 15 * 60 };

/**
 * Proves a token, and counts it as a guess where it is none.
 *
 * @param address where the request came from.
 * @throws {AppError} "not-found"; "too-many-tries".
 */
export async function proveToken(token: string, address: string): Promise<InvitationAccess> {
  await consumeAttempt(GUESSES_BY_ADDRESS, address);
  const access = await invitationAccess(token);
  await refundAttempt(GUESSES_BY_ADDRESS, address);
  return access;
}
