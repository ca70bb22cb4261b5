"use server";

import { redirect } from "next/navigation";
import { emailLinkAccess } from "@/features/accounts/email-links/access";
import { isOwnPassword } from "@/features/accounts/proof-mutations";
import { deletionSchema, linkSchema } from "@/features/accounts/schema";
import { actingViewer, sentenceOf, type Failure } from "@/server/action";
import { formAction } from "@/server/form-action";
import { parseForm } from "@/server/read-form";
import { endSession } from "@/server/session";
import { deleteAccount, deleteAccountWithLink } from "./delete-account-mutations";

/** Deletes the account of whoever is signed in, who says their password again. */
export const deleteByPassword = formAction(
  deletionSchema,
  async ({ password }) => {
    const viewer = await actingViewer();
    if (!(await isOwnPassword(viewer, password))) return { password: ["This is not your current password."] };
    await deleteAccount(viewer);
    await endSession();
    redirect("/account/deleted");
  },
  ["password"],
);

const NO_MORE = "This link cannot be used any more. Reload the page to see why.";

/** Deletes the account that a mailed link is of. */
export async function deleteByLink(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { link } = parseForm(linkSchema, form);
  try {
    if (!(await deleteAccountWithLink(await emailLinkAccess(link)))) return { status: "failed", says: NO_MORE };
    await endSession();
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  redirect("/account/deleted");
}
