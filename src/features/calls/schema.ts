import { z } from "zod";

/** Counts that a call's testers really worked otherwise than they said; see the engine's `MisworkedCount`. */
export const misworkedSchema = z.array(z.strictObject({ count: z.string(), size: z.string(), amount: z.int() }));

export type Misworked = z.infer<typeof misworkedSchema>;
