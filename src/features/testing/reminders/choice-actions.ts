"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { storeDailySummary } from "@/features/accounts/mutations";
import { summaryAccess } from "@/features/accounts/summary-access";
import { remindersAccess } from "@/features/recruiting/invitations/reminders-access";
import { actingViewer } from "@/server/action";
import { formAction } from "@/server/form-action";
import { isTimeZone } from "@/server/time-zone";
import { testerAccess } from "../home/request-access";
import { storeLinkedChoice, storeMailChoices, storeOwnReminders } from "./choice-mutations";
import { reminderChoiceSchema } from "./reminder-choice-schema";

const zoneSchema = z
  .string({ error: "Enter your time zone, such as Europe/Lisbon." })
  .trim()
  .refine(isTimeZone, { error: "This is not a known time zone. Choose one such as Europe/Lisbon." });

const onOffSchema = z.enum(["on", "off"], { error: "Choose one of the two." }).transform((text) => text === "on");

/** A tester says how often they get reminders, and where it is morning for them. */
export const saveOwnReminders = formAction(
  z.object({ testerId: z.string(), reminders: reminderChoiceSchema, timeZone: zoneSchema }),
  async ({ testerId, reminders, timeZone }) => {
    await storeOwnReminders(await testerAccess(testerId), { choice: reminders, timeZone });
    revalidatePath(`/testing/${testerId}`, "layout");
    return undefined;
  },
);

/** The same by the link of a reminder, which needs no sign-in. */
export const saveLinkedReminders = formAction(
  z.object({ link: z.string(), reminders: reminderChoiceSchema }),
  async ({ link, reminders }) => {
    await storeLinkedChoice(await remindersAccess(link), reminders);
    return undefined;
  },
);

/** A designer says by the link of a daily summary whether it comes. */
export const saveLinkedSummary = formAction(
  z.object({ link: z.string(), dailySummary: onOffSchema }),
  async ({ link, dailySummary }) => {
    await storeDailySummary(await summaryAccess(link), dailySummary);
    return undefined;
  },
);

/** The signed-in person says which mail they get, and where it is morning for them. */
export const saveMailChoices = formAction(
  z.object({ reminders: reminderChoiceSchema, dailySummary: onOffSchema, timeZone: zoneSchema }),
  async (choices) => {
    await storeMailChoices(await actingViewer(), choices);
    return undefined;
  },
);
