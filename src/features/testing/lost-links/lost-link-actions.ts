"use server";

import { setTimeout as pause } from "node:timers/promises";
import { lostLinkSchema } from "@/features/accounts/schema";
import { isMailOn } from "@/features/mail/mail-status";
import { clientAddress } from "@/server/client-address";
import { AppError } from "@/server/errors";
import { formAction } from "@/server/form-action";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { mailOwnLinks } from "./lost-link-mutations";

const HOUR = 60 * 60;
const BY_ADDRESS: Limit = { name: "lost-link-address", tries: 20, withinSeconds: HOUR };
const BY_EMAIL: Limit = { name: "lost-link-email", tries: 3, withinSeconds: HOUR };
/** So long does the answer take, whether or not there is a test. */
const ANSWER_AFTER_MS = 500;

/** Mails an address its links; the answer is the same for every address. */
export const askOwnLinks = formAction(lostLinkSchema, async ({ email }) => {
  if (!isMailOn()) throw new AppError("not-found");
  await consumeAttempt(BY_ADDRESS, await clientAddress());
  await consumeAttempt(BY_EMAIL, email);
  await Promise.all([mailOwnLinks(email), pause(ANSWER_AFTER_MS)]);
  return undefined;
});
