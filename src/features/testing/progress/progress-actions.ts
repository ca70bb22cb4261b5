"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { formAction } from "@/server/form-action";
import { readForm, textOf, type FormTexts } from "@/server/read-form";
import { testerPageHref } from "@/features/calls/call-pages";
import type { Viewer } from "@/server/viewer";
import { archiveCall, restoreCall } from "./archive-mutations";
import {
  closeCall,
  inviteByHand,
  inviteLonger,
  openByLinkAgain,
  noteTester,
  renewLink,
  reopenCall,
  withdrawInvited,
} from "./progress-mutations";
import { designerNoteSchema, newTesterSchema } from "../home/schema";

const DAY_MS = 24 * 60 * 60 * 1_000;
/** Days that an invitation is good for. */
const LONGEST_DAYS = 90;
const daysSchema = z.coerce.number().int().min(1).max(LONGEST_DAYS);

interface Asked {
  readonly access: CallAccess;
  readonly viewer: Viewer;
  readonly sent: FormTexts;
}

/** An editor's action on a call's progress; a failure comes back as a message. */
function callAction(run: (asked: Asked) => Promise<void>) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const callId = z.string().parse(textOf(sent, "callId"));
    await run({ access: await callAccess(viewer, callId, "editor"), viewer, sent });
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  });
}

function testerOf(sent: FormTexts): string {
  return z.uuid().parse(textOf(sent, "testerId"));
}

export const saveNote = callAction(async ({ access, sent }) => {
  await noteTester(access, testerOf(sent), designerNoteSchema.parse(textOf(sent, "note")));
});

export const makeNewLink = callAction(async ({ access, sent }) => {
  await renewLink(access, testerOf(sent));
});

export const giveNewWayIn = callAction(async ({ access, sent }) => {
  await openByLinkAgain(access, testerOf(sent));
});

export const withdrawInvitation = callAction(async ({ access, sent }) => {
  await withdrawInvited(access, testerOf(sent));
});

export const extendInvitation = callAction(async ({ access, sent }) => {
  const days = daysSchema.parse(textOf(sent, "days"));
  await inviteLonger(access, testerOf(sent), new Date(Date.now() + days * DAY_MS));
});

export const close = callAction(async ({ access }) => {
  await closeCall(access);
});

export const openAgain = callAction(async ({ access }) => {
  await reopenCall(access);
});

export const archive = callAction(async ({ access }) => {
  await archiveCall(access);
});

export const restore = callAction(async ({ access }) => {
  await restoreCall(access);
});

/** Invites somebody directly, and redirects to the page with their link. */
export const addTester = formAction(
  newTesterSchema.extend({ callId: z.string(), days: daysSchema, self: z.literal("on").optional() }),
  async ({ callId, days, self, ...tester }) => {
    const viewer = await actingViewer();
    const access = await callAccess(viewer, callId, "editor");
    const { document } = await latestRevision(access.pattern);
    if (!document.sizes.some(({ id }) => id === tester.size)) return { size: ["Choose a size."] };
    const expiresAt = new Date(Date.now() + days * DAY_MS);
    const { testerId } = await inviteByHand(access, { ...tester, expiresAt, self: self === "on" ? viewer : null });
    revalidatePath(`/calls/${callId}`, "layout");
    redirect(testerPageHref(callId, testerId));
  },
);
