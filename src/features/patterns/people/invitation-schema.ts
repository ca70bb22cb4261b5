import { z } from "zod";

const LONGEST_NOTE = 200;

export const helperRoleSchema = z.enum(["editor", "viewer"], { error: "Choose a role." });

export const noteSchema = z
  .string()
  .trim()
  .max(LONGEST_NOTE, { error: `Keep the note under ${LONGEST_NOTE} characters.` })
  .refine((note) => note.isWellFormed() && !note.includes("\u0000"), {
    error: "The note contains a character that cannot be stored.",
  });
