import { z } from "zod";

const NOTE_MOST = 500;
const NAME_MOST = 300;
const EMAIL_MOST = 254;

/** What a database cannot hold is left out; nobody types it. A form leaves out what is empty. */
const written = z
  .string()
  .default("")
  .transform((text) => text.toWellFormed().replaceAll("\0", "").trim());

/** A tester's word with a milestone. */
export const milestoneNoteSchema = written.pipe(
  z.string().max(NOTE_MOST, { error: `Keep it under ${NOTE_MOST} characters.` }),
);

/** What a designer notes about a tester. */
export const designerNoteSchema = written.pipe(
  z.string().max(4 * NOTE_MOST, { error: `Keep the note under ${4 * NOTE_MOST} characters.` }),
);

/** Words that a tester can tap; that she must stop is asked first. */
export const tappedWordSchema = z.enum(["track", "behind", "stuck"]);

export type TappedWord = z.infer<typeof tappedWordSchema>;

/** What a tester settles as she accepts. */
export const acceptedSchema = z.object({
  unit: z.enum(["cm", "in"]),
  terms: z.enum(["us", "uk"]),
  timeZone: z.string(),
});

export type AcceptedChoices = z.infer<typeof acceptedSchema>;

/** Somebody whom the designer invites by hand. */
export const newTesterSchema = z.object({
  name: written.pipe(
    z
      .string()
      .min(1, { error: "Enter a name, or whatever you know them by." })
      .max(NAME_MOST, { error: `A name has at most ${NAME_MOST} characters.` }),
  ),
  email: written
    .pipe(
      z
        .string()
        .toLowerCase()
        .max(EMAIL_MOST, { error: `An e-mail address has at most ${EMAIL_MOST} characters.` }),
    )
    .pipe(
      z.union([z.literal(""), z.email()], { error: "That is not a whole e-mail address, such as ann@example.org." }),
    )
    .transform((email) => (email === "" ? null : email)),
  size: z.string({ error: "Choose a size." }).min(1, { error: "Choose a size." }),
});

export type NewTester = z.infer<typeof newTesterSchema>;
