import { z } from "zod";

const querySchema = z.object({ place: z.string(), say: z.enum(["question", "trouble"]) });

/** What is being said, and where, as an address asks for it. */
export type PlaceQuery = z.infer<typeof querySchema>;

/** @returns null where the address asks for nothing. */
export function placeQuery(asked: Readonly<Record<string, string | string[] | undefined>>): PlaceQuery | null {
  const parsed = querySchema.safeParse(asked);
  return parsed.success ? parsed.data : null;
}
