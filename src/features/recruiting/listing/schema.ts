import { z } from "zod";
import { idSchema, textSchema } from "@/engine/pattern";

/** A day in the call's time zone. */
export const daySchema = z.iso.date({ error: "Enter a date such as 2027-03-14." });

/** The dates of a test. */
export const datesSchema = z.strictObject({
  /** The last day on which somebody can apply. */
  applyUntil: daySchema,
  startOn: daySchema,
  swatchBy: daySchema,
  reportBy: daySchema,
});

export type Dates = z.infer<typeof datesSchema>;

/** A tester's own dates, without the last day to apply. */
export const testerDatesSchema = datesSchema.omit({ applyUntil: true });

export type TesterDates = z.infer<typeof testerDatesSchema>;

/** A published listing. Its places and its agreement have rows of their own. */
export const listingSchema = z.strictObject({
  introduction: textSchema,
  /** Such as `Europe/Lisbon`. */
  timeZone: z.string(),
  dates: datesSchema,
  /** When the pattern is planned to be released; left out where that is not known. */
  releaseOn: daySchema.optional(),
  /** The designer's own text of the newest agreement; left out where that is all of it. */
  agreementText: textSchema.optional(),
  /** What testers do and send. */
  asks: textSchema,
  yarn: textSchema,
  tools: textSchema,
  /** What testers get. */
  gives: textSchema,
  /** Body measurements that applicants are asked for. */
  bodyAsked: z.array(idSchema),
  /** Those of them that decide the size. */
  fitBy: z.array(idSchema),
  /** Null for no limit. */
  mostApplications: z.int().min(1).nullable(),
});

export type ListingDocument = z.infer<typeof listingSchema>;

/** The fields of the listing's form as typed, by name, including places and agreement. */
export const typedListingSchema = z.record(z.string(), textSchema);

export type TypedListing = Readonly<Record<string, string>>;

/** A draft of a listing as the database stores it: whatever was typed, faulty or not. */
export const listingDraftSchema = z.strictObject({ typed: typedListingSchema });
