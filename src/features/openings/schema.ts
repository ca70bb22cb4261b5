import { z } from "zod";
import { idSchema, textSchema } from "@/engine/pattern";

/** A day as people name it, in the call's time zone. */
export const daySchema = z.iso.date({ error: "Give the day as year-month-day, such as 2027-03-14." });

/** The days of a test. */
export const datesSchema = z.strictObject({
  /** The last day on which somebody can apply. */
  applyUntil: daySchema,
  startOn: daySchema,
  swatchBy: daySchema,
  reportBy: daySchema,
});

export type Dates = z.infer<typeof datesSchema>;

/** A tester's own days, without the one to apply by. */
export const testerDatesSchema = datesSchema.omit({ applyUntil: true });

export type TesterDates = z.infer<typeof testerDatesSchema>;

/** What a call tells whoever may apply, once it is published. Its places and its agreement stand in rows of their own. */
export const openingSchema = z.strictObject({
  introduction: textSchema,
  /** Such as `Europe/Lisbon`. */
  timeZone: z.string(),
  dates: datesSchema,
  /** What a tester is to do and to send. */
  asks: textSchema,
  yarn: textSchema,
  tools: textSchema,
  /** What testers get. */
  gives: textSchema,
  /** Body measurements that applicants are asked for. */
  bodyAsked: z.array(idSchema),
  /** Those of them that decide the size. */
  fitBy: z.array(idSchema),
  /** Null: as many as come. */
  mostApplications: z.int().min(1).nullable(),
});

export type OpeningDocument = z.infer<typeof openingSchema>;

/** The fields of the opening's form as typed, by name, places and agreement among them. */
export const typedOpeningSchema = z.record(z.string(), textSchema);

export type TypedOpening = Readonly<Record<string, string>>;

/** An opening as the database keeps it while it is written: whatever was typed, faulty or not. */
export const openingDraftSchema = z.strictObject({ typed: typedOpeningSchema });
