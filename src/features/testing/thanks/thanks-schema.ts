import { z } from "zod";
import { pageNumberSchema } from "@/ui/page-number";

export const MAX_CREDIT_NAME_LENGTH = 100;
export const MAX_PAYMENT_LENGTH = 200;

/** In what order testers are named. */
const CREDIT_ORDERS = ["name", "size", "report"] as const;

export type CreditOrder = (typeof CREDIT_ORDERS)[number];

/** The query of the page; unknown values are ignored. */
export const thanksQuerySchema = z.object({
  page: pageNumberSchema,
  order: z.enum(CREDIT_ORDERS).catch("name"),
});

/** What a designer notes about the rewards of one or several testers. */
export const REWARD_STEPS = ["pattern-sent", "pattern-not-sent", "named", "not-named", "payment"] as const;

export type RewardStep = (typeof REWARD_STEPS)[number];

/** A text on one line, without characters that the database refuses. */
export function oneLine(text: string): string {
  return text.toWellFormed().replaceAll("\0", "").replaceAll(/\s+/g, " ").trim();
}
