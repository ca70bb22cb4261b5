import { z } from "zod";

/** Where a link of a message leads. The row holds no secret: the worker makes the link's key when it sends. */
const targetSchema = z.union([
  z.strictObject({ path: z.string().startsWith("/") }),
  z.strictObject({
    /** The address up to the key. */
    before: z.string().startsWith("/"),
    key: z.enum(["application", "email", "invitation", "reminders", "summary"]),
    id: z.uuid(),
    version: z.int(),
    /** The address after the key, such as `/dates.ics`. */
    after: z.string().startsWith("/").optional(),
  }),
]);

const partSchema = z.union([
  z.strictObject({ text: z.string() }),
  /** Words of a person. */
  z.strictObject({ quote: z.string() }),
  z.strictObject({ facts: z.array(z.tuple([z.string(), z.string()])) }),
  /** A button in HTML. */
  z.strictObject({ link: z.string(), to: targetSchema }),
]);

/** What a message says, once for plain text and HTML. */
export const contentSchema = z.strictObject({
  subject: z.string(),
  /** The reader's name; "" where it is not known. */
  name: z.string(),
  parts: z.array(partSchema),
  /** Who signs it and gets the replies; null: Sizewright itself. */
  from: z.strictObject({ name: z.string(), email: z.string() }).nullable(),
  /** Why they get it, for the last line: “because you applied to test “…””. */
  because: z.string(),
  /** Where its reader chooses to get fewer like it or none; left out where nobody can do without. */
  fewer: targetSchema.optional(),
});

export type MessageContent = z.infer<typeof contentSchema>;
/** What a message says; why somebody gets it, and who signs, follow from whom it is to. */
export type MessageWords = Pick<MessageContent, "subject" | "parts">;
export type LinkTarget = z.infer<typeof targetSchema>;

/** Mail in a designer's name to applicants and testers of their test, which they may change, and mostly switch off. */
export type DesignerMailKind =
  | "application-received"
  | "application-link"
  | "link-sent"
  | "place-offered"
  | "no-place"
  | "place-accepted"
  | "place-released"
  | "question-answered"
  | "number-asked"
  | "correction-published"
  | "pattern-released"
  | "report-received"
  | "designer-wrote"
  | "reminder";

/**
 * Mail in Sizewright's own name, which nobody changes or switches off: to designers, what people ask for themselves, and
 * what concerns an account or an address.
 */
type OwnMailKind =
  | "place-declined"
  | "place-given-back"
  | "sign-in-link"
  | "sign-up-link"
  | "sign-up-known"
  | "daily-summary"
  | "prove-address"
  | "change-address"
  | "address-known"
  | "address-changed"
  | "delete-account"
  | "own-links"
  | "deletion-soon";

/** What causes a message. */
export type MessageKind = DesignerMailKind | OwnMailKind;
