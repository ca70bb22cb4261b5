"use server";

import { revalidatePath } from "next/cache";
import { checkMailServer } from "@/features/mail/server-mutations";
import { viewerAction, type Failure } from "@/server/action";
import { AppError } from "@/server/errors";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { operatorAccess } from "./access";

const CHECKS: Limit = { name: "mail-check", tries: 20, withinSeconds: 60 * 60 };

/** Asks the mail server whether it takes mail, for whoever runs this Sizewright. */
export const checkMail = viewerAction(async (viewer): Promise<Failure | undefined> => {
  if ((await operatorAccess(viewer)) === null) throw new AppError("not-found");
  await consumeAttempt(CHECKS, viewer.accountId);
  await checkMailServer();
  revalidatePath("/account");
  return undefined;
});
