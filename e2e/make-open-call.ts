import { randomUUID } from "node:crypto";
import { listingDocument } from "../test/factories/listing";
import { patternDocument } from "../test/factories/pattern";
import { query, type Designer } from "./designer";

/** A call that is published and takes applications, with an agreement of version 1. */
export async function makeOpenCall(owner: Designer): Promise<string> {
  const [patternId, callId] = [randomUUID(), randomUUID()];
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  const part = "INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')";
  await query(part, [patternId, owner.accountId]);
  const revision = "INSERT INTO revision (pattern_id, number, document, reason) VALUES ($1, 1, $2, 'First')";
  await query(revision, [patternId, JSON.stringify(patternDocument())]);
  await query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'Invented call')", [callId, patternId]);
  await query(
    "INSERT INTO place (call_id, size, least, wanted, most) VALUES ($1, 'small', 1, 2, 3), ($1, 'large', 1, 2, 3)",
    [callId],
  );
  await publishListing(callId);
  return callId;
}

/** Publishes a listing for a call that has none, with an agreement of version 1. */
export async function publishListing(
  callId: string,
  change: Parameters<typeof listingDocument>[0] = {},
): Promise<void> {
  await agreement(callId, 1, "You test and you tell.");
  const listing =
    "INSERT INTO listing (call_id, document, published_at, apply_until) VALUES ($1, $2, now(), '2090-03-15')";
  await query(listing, [callId, JSON.stringify(listingDocument(change))]);
}

/** The call's agreement in a further version. */
export async function agreement(callId: string, version: number, text: string): Promise<void> {
  await query("INSERT INTO agreement (call_id, version, text) VALUES ($1, $2, $3)", [callId, version, text]);
}
