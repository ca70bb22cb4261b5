import { z } from "zod";
import { pageNumberSchema } from "@/ui/page-number";

/** In what order testers are named. */
const CREDIT_ORDERS = ["name", "size", "report"] as const;

export type CreditOrder = (typeof CREDIT_ORDERS)[number];

/** The query of the page; unknown values are ignored. */
export const thanksQuerySchema = z.object({
  page: pageNumberSchema,
  order: z.enum(CREDIT_ORDERS).catch("name"),
});

/** A text on one line, without characters that the database refuses. */
export function oneLine(text: string): string {
  return text.toWellFormed().replaceAll("\0", "").replaceAll(/\s+/g, " ").trim();
}
