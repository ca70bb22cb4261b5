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

/** Testers are adults: for a child, somebody else would have to agree. */
export const YOUNGEST_AGE = 18;
export const OLDEST_MINIMUM = 99;
export const MOST_MONTHS_STORED = 60;

/** What the designer says in the privacy notice; the rest of it is the same for every test. */
const noticeSchema = z.strictObject({
  responsible: textSchema,
  /** Where testers reach them about their data. */
  contact: textSchema,
  minimumAge: z.int().min(YOUNGEST_AGE).max(OLDEST_MINIMUM),
  /** For so long after the test is closed what is about people is stored. */
  monthsStored: z.int().min(1).max(MOST_MONTHS_STORED),
  /** What the designer adds; "" for nothing. */
  more: textSchema,
});

export type NoticeFacts = z.infer<typeof noticeSchema>;

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
  /** Left out in those from before there were notices, and in drafts where it is not complete. */
  notice: noticeSchema.optional(),
});

export type ListingDocument = z.infer<typeof listingSchema>;

/** The fields of the listing's form as typed, by name, including places and agreement. */
export const typedListingSchema = z.record(z.string(), textSchema);

export type TypedListing = Readonly<Record<string, string>>;

/** A draft of a listing as the database stores it: whatever was typed, faulty or not. */
export const listingDraftSchema = z.strictObject({ typed: typedListingSchema });
