import { z } from "zod";
import { WEARERS } from "@/features/recruiting/applications/schema";

const MAX_NOTE_LENGTH = 500;
const MAX_NAME_LENGTH = 300;
const MAX_EMAIL_LENGTH = 254;

/**
 * Drops characters that the database cannot store. Form parsing drops empty values, and does so again at every schema that
 * a text is piped into, so all other rules are refinements.
 */
const written = z
  .string()
  .default("")
  .transform((text) => text.toWellFormed().replaceAll("\0", "").trim());

/** A tester's note with a progress update. */
export const milestoneNoteSchema = written.refine((note) => note.length <= MAX_NOTE_LENGTH, {
  error: `A note has at most ${MAX_NOTE_LENGTH} characters.`,
});

/** A designer's note about a tester. */
export const designerNoteSchema = written.refine((note) => note.length <= 4 * MAX_NOTE_LENGTH, {
  error: `A note has at most ${4 * MAX_NOTE_LENGTH} characters.`,
});

/** Statuses that a tester can send by one tap; stopping needs a confirmation. */
export const tappedStatusSchema = z.enum(["track", "behind", "stuck"]);

export type TappedStatus = z.infer<typeof tappedStatusSchema>;

/** What a tester chooses when accepting. */
export const acceptedSchema = z.object({
  unit: z.enum(["cm", "in"]),
  terms: z.enum(["us", "uk"]),
  timeZone: z.string(),
  /** Who wears the garment, where that is asked; an adult agrees to what is sent of them, for a child their parent or guardian does. */
  wearer: z.enum(["self", ...WEARERS]).optional(),
  /** The version of the agreement that they ticked. */
  agreed: z.coerce.number().int().optional(),
});

export type AcceptedChoices = z.infer<typeof acceptedSchema>;

/** Somebody whom the designer invites directly. */
export const newTesterSchema = z.object({
  name: written
    .refine((name) => name !== "", { error: "Enter a name or nickname, such as Ann." })
    .refine((name) => name.length <= MAX_NAME_LENGTH, { error: `A name has at most ${MAX_NAME_LENGTH} characters.` }),
  email: written
    .refine((email) => email === "" || isEmail(email), {
      error: "This is not a complete e-mail address. Enter one such as ann@example.org.",
    })
    .transform((email) => (email === "" ? null : email.toLowerCase())),
  size: z.string({ error: "Choose a size." }),
});

function isEmail(text: string): boolean {
  return text.length <= MAX_EMAIL_LENGTH && z.email().safeParse(text).success;
}

export type NewTester = z.infer<typeof newTesterSchema>;
