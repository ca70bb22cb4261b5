"use server";

import { sendLinkAgain, sendMailToTesterAgain } from "./mail-mutations";
import { oneTesterAction } from "./one-tester-action";

/** Sends what did not reach a tester once more. */
export const sendMailAgain = oneTesterAction(sendMailToTesterAgain);

/** Sends a tester their link again. */
export const sendLink = oneTesterAction(sendLinkAgain);
