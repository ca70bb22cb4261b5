"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { textSchema, type PatternDocument } from "@/engine/pattern";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callPageHref } from "@/features/calls/call-pages";
import { currentCall } from "@/features/calls/data";
import { callPlaces } from "@/features/calls/places-data";
import { patternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer, sentenceOf, viewerAction, type Failure } from "@/server/action";
import { lastTexts, parseForm, readForm } from "@/server/read-form";
import { idempotencyKey } from "@/server/idempotency-key";
import { initialListing } from "../initial-listing";
import { lastNotice, readListing } from "../data";
import { editedListing } from "../edited-data";
import { fieldNames } from "../field-names";
import { createListing, saveTypedListing, startCall, publishListing, unpublishListing } from "../mutations";
import { readTyped, type FieldFault } from "../read-typed";
import { typedListingSchema, type TypedListing } from "../schema";
import { completeListing } from "../complete-listing";
import { faultsOfAll, isSameForAll, spreadOverSizes } from "../same-for-all";

/** The browser's zone, if its scripts ran. */
const zoneSchema = z.string().max(100).default("");
const newCallSchema = z.object({ patternId: z.string(), formKey: z.uuid(), timeZone: zoneSchema });

/** Creates a call for a pattern with an unpublished listing, and redirects to it. */
export const openNewCall = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, formKey, timeZone } = parseForm(newCallSchema, form);
    const access = await patternAccess(viewer, patternId, "editor");
    const { document: pattern } = await latestRevision(access);
    const title = `Test of ${pattern.name}`;
    const notice = await lastNotice(access);
    const typed = initialListing(pattern, { title, places: null, timeZone, notice });
    const { callId } = await startCall(access, {
      title,
      typed,
      idempotencyKey: idempotencyKey(formKey, patternId),
    });
    redirect(callPageHref(callId, "setUp"));
  },
);

const addListingSchema = z.object({ callId: z.string(), timeZone: zoneSchema });

/** Creates a listing for a call that has none. */
export const addListing = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, timeZone } = parseForm(addListingSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const [{ document: pattern }, { title }, places, notice] = await Promise.all([
      latestRevision(access.pattern),
      currentCall(access),
      callPlaces(access),
      lastNotice(access.pattern),
    ]);
    await createListing(access, initialListing(pattern, { title, places, timeZone, notice }));
    revalidatePath(callPageHref(callId, "setUp"));
    return undefined;
  },
);

/** The result of sending the listing's form. */
export interface ListingAnswer {
  readonly status: "saved" | "published" | "unpublished" | "faulty" | "conflict" | "failed";
  /** What was sent: it stays in the form whatever the result. */
  readonly typed: TypedListing;
  /** The version that the next save is based on. */
  readonly version: number;
  readonly faults: readonly FieldFault[];
  /** What somebody else has saved in the meantime. */
  readonly theirs: TypedListing | null;
  /** Why it failed. */
  readonly message: string | null;
}

const sentSchema = z.object({
  callId: z.string(),
  version: z.coerce.number().int().min(1),
  intent: z.enum(["save", "publish", "unpublish"]).default("save"),
});

interface Sent {
  readonly access: CallAccess;
  readonly pattern: PatternDocument;
  readonly version: number;
  readonly typed: TypedListing;
}

/** Saves, publishes or unpublishes a listing; what was typed comes back with the result. */
export async function saveListing(_last: ListingAnswer | undefined, form: FormData): Promise<ListingAnswer> {
  const { callId, version, intent } = parseForm(sentSchema, form);
  let all = textsOf(form);
  try {
    const access = await callAccess(await actingViewer(), callId, "editor");
    const { document: pattern } = await latestRevision(access.pattern);
    const isSame = isSameForAll(all);
    all = spreadOverSizes(all, pattern);
    const names = new Set(fieldNames(pattern));
    const typed = Object.fromEntries(Object.entries(all).filter(([name]) => names.has(name)));
    const sent = { access, pattern, version, typed };
    const answer = await (intent === "publish" ? publish(sent) : intent === "save" ? save(sent) : unpublish(sent));
    revalidatePath(`/calls/${callId}`, "layout");
    return isSame ? { ...answer, faults: faultsOfAll(answer.faults, pattern) } : answer;
  } catch (error) {
    return { status: "failed", typed: all, version, faults: [], theirs: null, message: sentenceOf(error) };
  }
}

/** Normalises line breaks, so that the same text compares as equal however the form was sent. */
function textsOf(form: FormData): TypedListing {
  const entries = Object.entries(lastTexts(readForm(form)));
  return Object.fromEntries(entries.map(([name, text]) => [name, text.replace(/\r\n?/g, "\n")]));
}

function answered({ typed, version }: Sent, answer: Partial<ListingAnswer>): ListingAnswer {
  return { status: "faulty", typed, version, faults: [], theirs: null, message: null, ...answer };
}

async function save(sent: Sent): Promise<ListingAnswer> {
  const { access, pattern, version, typed } = sent;
  if (!typedListingSchema.safeParse(typed).success) return answered(sent, { faults: unstorable(typed) });
  const { listing, faults } = readTyped(typed, pattern);
  const wrong = faults.filter(({ isMissing }) => !isMissing);
  const isTitled = listing.title !== "" && !wrong.some(({ field }) => field === "title");
  const saved = await saveTypedListing(access, { version, typed, title: isTitled ? listing.title : null });
  if (saved.status === "conflict") return await conflict(sent);
  return answered(sent, { status: "saved", version: saved.version, faults: wrong });
}

async function publish(sent: Sent): Promise<ListingAnswer> {
  const { access, pattern, version, typed } = sent;
  const published = await readListing(access);
  const whole = completeListing(typed, { pattern, now: new Date(), published: published?.document ?? null });
  const refused = async (faults: readonly FieldFault[]) =>
    answered(sent, { faults, ...(published === null ? await savedAsDraft(sent) : {}) });
  if (!whole.ok) return await refused(whole.faults);
  const saved = await publishListing(access, { version, listing: whole.listing });
  if (saved.status === "conflict") return await conflict(sent);
  if (saved.status === "refused") return await refused(saved.faults);
  return answered(sent, { status: "published", version: saved.version });
}

/** What cannot be published yet is saved as a draft. */
async function savedAsDraft(sent: Sent): Promise<Partial<ListingAnswer>> {
  const { status, version, theirs } = await save(sent);
  return status === "conflict" ? { status, version, theirs } : { version };
}

async function unpublish(sent: Sent): Promise<ListingAnswer> {
  const { access, version, typed } = sent;
  if (!typedListingSchema.safeParse(typed).success) return answered(sent, { faults: unstorable(typed) });
  const result = await unpublishListing(access, { version, typed });
  if (result.status === "conflict") return await conflict(sent);
  if (result.status === "saved") return answered(sent, { status: "unpublished", version: result.version });
  const message =
    "People have already applied or been invited, so it stays published. You can still change it, or close the test.";
  return answered(sent, { status: "failed", message });
}

async function conflict(sent: Sent): Promise<ListingAnswer> {
  const theirs = await editedListing(sent.access);
  return answered(sent, {
    status: "conflict",
    version: theirs?.version ?? sent.version,
    theirs: theirs?.typed ?? null,
  });
}

function unstorable(typed: TypedListing): FieldFault[] {
  return Object.entries(typed)
    .filter(([, text]) => !textSchema.safeParse(text).success)
    .map(([field]) => ({
      field,
      message:
        "This is too long, or contains a character that cannot be stored. Shorten it, or type it again instead of pasting it.",
      isMissing: false,
    }));
}
