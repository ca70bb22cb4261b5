"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { sentenceOf, type Failure } from "@/server/action";
import { lastTexts, readForm, textOf, type FormTexts } from "@/server/read-form";
import { isTimeZone } from "@/server/time-zone";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { invitedAccess, type InvitedAccess } from "@/features/recruiting/invitations/access";
import { readInvited } from "./invited-data";
import { acceptInvited, bindToAccount, declineInvited } from "./invited-mutations";
import { acceptedSchema } from "../home/schema";
import { letInTester } from "../home/let-in-tester";

/** An action that an invitation's link allows; if it is not possible, the page says why. */
function linkAction(run: (access: InvitedAccess, viewer: Viewer | null, sent: FormTexts) => Promise<void>) {
  return async (_last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const link = z.string().parse(textOf(sent, "link"));
    try {
      await run(await invitedAccess(link), await optionalViewer(), sent);
    } catch (error) {
      return { status: "failed", says: sentenceOf(error) };
    }
    revalidatePath(`/invited/${link}`);
    return undefined;
  };
}

/** Accepts, and redirects to the tester's home page. */
export const acceptTest = linkAction(async (access, viewer, sent) => {
  const { timeZone, ...choices } = acceptedSchema.parse(lastTexts(sent));
  const { accountId, timeZone: stored } = await readInvited(access);
  const asAccount = accountId !== null || textOf(sent, "as") === "account" ? viewer : null;
  await acceptInvited(access, { ...choices, viewer: asAccount, timeZone: isTimeZone(timeZone) ? timeZone : stored });
  await goToPage(access, viewer);
});

/** Declines. */
export const declineTest = linkAction(async (access, viewer) => {
  await declineInvited(access, viewer);
});

/** Gives this browser access to a test that was accepted without an account, or links it to the viewer's account. */
export const goOnToPage = linkAction(async (access, viewer, sent) => {
  if (viewer !== null && textOf(sent, "as") === "account") await bindToAccount(access, viewer);
  await goToPage(access, viewer);
});

/** Redirects to the tester's home page if the invitation is accepted and the viewer has access. */
async function goToPage(access: InvitedAccess, viewer: Viewer | null): Promise<void> {
  const { acceptedAt, accountId, testerId } = await readInvited(access);
  if (acceptedAt === null || (accountId !== null && accountId !== viewer?.accountId)) return;
  if (accountId === null) await letInTester(access);
  redirect(`/testing/${testerId}`);
}
