"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { callAccess } from "@/features/calls/access";
import { callPageHref } from "@/features/calls/call-pages";
import { latestRevision } from "@/features/patterns/data";
import { editedListing } from "@/features/recruiting/listing/edited-data";
import { viewerAction, type Failure } from "@/server/action";
import { idempotencyKey } from "@/server/idempotency-key";
import { parseForm, readForm } from "@/server/read-form";
import { countEarlier, inviteAgain, startNextCall, storePieces } from "./again-mutations";
import { againFormSchema, countEarlierSchema, nextCallSchema, piecesSchema } from "./again-schema";
import { nextListing } from "@/features/recruiting/listing/next-listing-computed";

const DAY_MS = 24 * 60 * 60 * 1_000;

/** Starts a test of the newest revision that follows a call, and leads to its listing. */
export const startNext = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, formKey } = parseForm(nextCallSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const [{ document, number }, listing] = await Promise.all([latestRevision(access.pattern), editedListing(access)]);
    const title = `Test of ${document.name}, revision ${number}`;
    const next = await startNextCall(access, {
      title,
      typed: nextListing(document, { typed: listing?.typed ?? null, title }),
      idempotencyKey: idempotencyKey(formKey, callId),
    });
    redirect(callPageHref(next.callId, "setUp"));
  },
);

/** Counts the reports of the earlier test in this one's results too, or no more. */
export const setCountsEarlier = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, counts } = parseForm(countEarlierSchema, form);
    await countEarlier(await callAccess(viewer, callId, "editor"), counts === "yes");
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);

/** Chooses the pieces that testers make. */
export const choosePieces = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const [sentTo = ""] = sent.get("callId") ?? [];
    const { callId, piece } = piecesSchema.parse({ callId: sentTo, piece: sent.get("piece") ?? [] });
    await storePieces(await callAccess(viewer, callId, "editor"), piece);
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);

/** Invites the chosen testers of the earlier call. */
export const inviteEarlier = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const [callId = ""] = sent.get("callId") ?? [];
    const access = await callAccess(viewer, callId, "editor");
    const { testerId: testerIds, days } = againFormSchema.parse({
      ...{ callId, testerId: sent.get("testerId") ?? [], days: sent.get("days")?.[0] },
    });
    if (testerIds.length === 0) return { status: "failed", says: "Choose at least one tester first." };
    await inviteAgain(access, { testerIds, expiresAt: new Date(Date.now() + days * DAY_MS) });
    revalidatePath(`/calls/${callId}`, "layout");
    redirect(callPageHref(callId, "progress"));
  },
);
