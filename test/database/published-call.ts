import { randomUUID } from "node:crypto";
import type { PatternDocument, Places } from "@/engine/pattern";
import { callAccess, proveCall, type CallAccess } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import type { ListingDocument } from "@/features/recruiting/listing/schema";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { database } from "@/server/database";
import { endOfDay } from "@/server/time-zone";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { listingDocument } from "../factories/listing";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";

export interface PublishedCallMade {
  readonly callId: string;
  readonly patternId: string;
  readonly owner: Viewer;
  /** The owner's. */
  readonly access: CallAccess;
}

/** A designer's call that is published and takes applications, with an agreement of version 1. */
export async function makePublishedCall(
  given: { pattern?: PatternDocument; places?: Places; listing?: Partial<ListingDocument> } = {},
): Promise<PublishedCallMade> {
  const owner = await makeViewer("Ana");
  const document = given.pattern ?? patternDocument();
  const places = given.places ?? Object.fromEntries(document.sizes.map(({ id }) => [id, { least: 1, wanted: 2 }]));
  const { patternId, callId } = await inTransaction(async (transaction) => {
    const made = await createPattern(owner, { document, reason: "first" }, transaction);
    const pattern = await provePattern(transaction, { viewer: owner, patternId: made.patternId, least: "owner" });
    return { ...made, ...(await createCall(pattern, { title: "Invented call", places }, transaction)) };
  });
  const listing = listingDocument(given.listing);
  const applyUntil = endOfDay(listing.dates.applyUntil, listing.timeZone);
  await database().agreement.create({ data: { callId, version: 1, text: "You test and you tell." } });
  await database().listing.create({ data: { callId, document: listing, publishedAt: new Date(), applyUntil } });
  return { callId, patternId, owner, access: await callAccess(owner, callId, "owner") };
}

/** Somebody with a part in the call's pattern. */
export async function joinCall({ patternId, callId }: PublishedCallMade, role: "editor" | "viewer") {
  const viewer = await makeViewer(`Helper ${randomUUID()}`);
  await database().membership.create({ data: { patternId, accountId: viewer.accountId, role } });
  return { viewer, access: await proveCall(database(), { viewer, callId, least: "viewer" }) };
}
