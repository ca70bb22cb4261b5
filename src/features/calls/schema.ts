import { z } from "zod";

/** Errors in the instructions: counts that a call's testers really worked; see the engine's `InstructionError`. */
export const instructionErrorsSchema = z.array(
  z.strictObject({ count: z.string(), size: z.string(), amount: z.int() }),
);

export type InstructionErrors = z.infer<typeof instructionErrorsSchema>;
