"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { sentenceOf, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { applicationAccess } from "../access";
import { RefusedError } from "../check-free";
import { deleteApplication, takeUpAgain, withdrawApplication } from "./own-mutations";

const formSchema = z.object({ link: z.string() });

const NOT_AGAIN =
  "You cannot resubmit it now: applications have closed, the test is closed, or it has enough applications.";

/** The link is the proof, whoever is signed in. */
function linkAction(run: (link: string) => Promise<void>) {
  return async (_last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { link } = parseForm(formSchema, form);
    try {
      await run(link);
    } catch (error) {
      const says = error instanceof RefusedError ? NOT_AGAIN : sentenceOf(error);
      return { status: "failed", says };
    }
    revalidatePath(`/applications/${link}`);
    return undefined;
  };
}

/** Withdraws an application. */
export const withdrawOwn = linkAction(async (link) => await withdrawApplication(await applicationAccess(link)));

/** Resubmits a withdrawn application. */
export const takeUpOwn = linkAction(async (link) => await takeUpAgain(await applicationAccess(link)));

/** Deletes an application, and shows a confirmation. */
export async function deleteOwn(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { link } = parseForm(formSchema, form);
  try {
    await deleteApplication(await applicationAccess(link));
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  redirect("/applications/deleted");
}
