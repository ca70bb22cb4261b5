import "server-only";
import type { PublishedCall } from "../listing/access";
import { listingSchema } from "../listing/schema";
import type { Connection } from "@/server/transaction";
import type { Refusal } from "./apply/apply-answer";

/** A call refuses an application, with the reason. */
export class RefusedError extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal);
    this.name = "RefusedError";
  }
}

/** Needs a lock on the call's row. @throws {RefusedError} "full" if the call has reached its limit of applications. */
export async function checkFree(transaction: Connection, { callId }: PublishedCall): Promise<void> {
  const listing = await transaction.listing.findUniqueOrThrow({ where: { callId }, select: { document: true } });
  const current = await transaction.application.count({ where: { callId, withdrawnAt: null } });
  const { mostApplications } = listingSchema.parse(listing.document);
  if (mostApplications !== null && current >= mostApplications) throw new RefusedError("full");
}
