import "server-only";
import type { PublishedCall } from "@/features/openings/access";
import { openingSchema } from "@/features/openings/schema";
import type { Connection } from "@/server/transaction";
import type { Refusal } from "./apply-form";

/** That a call does not take an application, and why. */
export class RefusedError extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal);
    this.name = "RefusedError";
  }
}

/** For who holds the call's row. @throws {RefusedError} "full" where the call has as many applications as it takes. */
export async function checkFree(transaction: Connection, { callId }: PublishedCall): Promise<void> {
  const opening = await transaction.opening.findUniqueOrThrow({ where: { callId }, select: { document: true } });
  const standing = await transaction.application.count({ where: { callId, withdrawnAt: null } });
  const { mostApplications } = openingSchema.parse(opening.document);
  if (mostApplications !== null && standing >= mostApplications) throw new RefusedError("full");
}
