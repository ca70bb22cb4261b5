import { z } from "zod";

const NOTE_MOST = 500;
const NAME_MOST = 300;
const EMAIL_MOST = 254;

/**
 * What a database cannot hold is left out; nobody types it. A form leaves out what is empty, and does so again at every
 * schema that a text is piped on to: what else is asked of a text stands in refinements.
 */
const written = z
  .string()
  .default("")
  .transform((text) => text.toWellFormed().replaceAll("\0", "").trim());

/** A tester's word with a milestone. */
export const milestoneNoteSchema = written.refine((note) => note.length <= NOTE_MOST, {
  error: `Keep it under ${NOTE_MOST} characters.`,
});

/** What a designer notes about a tester. */
export const designerNoteSchema = written.refine((note) => note.length <= 4 * NOTE_MOST, {
  error: `Keep the note under ${4 * NOTE_MOST} characters.`,
});

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
  name: written
    .refine((name) => name !== "", { error: "Enter a name, or whatever you know them by." })
    .refine((name) => name.length <= NAME_MOST, { error: `A name has at most ${NAME_MOST} characters.` }),
  email: written
    .refine((email) => email === "" || isEmail(email), {
      error: "That is not a whole e-mail address, such as ann@example.org.",
    })
    .transform((email) => (email === "" ? null : email.toLowerCase())),
  size: z.string({ error: "Choose a size." }),
});

function isEmail(text: string): boolean {
  return text.length <= EMAIL_MOST && z.email().safeParse(text).success;
}

export type NewTester = z.infer<typeof newTesterSchema>;

/** What has become of an invitation. */
export type InvitationState = "invited" | "lapsed" | "accepted" | "declined" | "withdrawn" | "stopped";

/** The moments of a tester's row that say so. */
export interface InvitationMoments {
  readonly invitationEndsAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly stoppedAt: Date | null;
}

/** @returns "lapsed" where she has not answered by the invitation's end; "withdrawn" where the designer took it back. */
export function invitationState(tester: InvitationMoments, now: Date): InvitationState {
  if (tester.stoppedAt !== null) return "stopped";
  if (tester.withdrawnAt !== null) return "withdrawn";
  if (tester.declinedAt !== null) return "declined";
  if (tester.acceptedAt !== null) return "accepted";
  return tester.invitationEndsAt !== null && tester.invitationEndsAt <= now ? "lapsed" : "invited";
}
