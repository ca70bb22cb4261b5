import { z } from "zod";

const querySchema = z.object({ place: z.string(), say: z.enum(["question", "trouble"]) });

/** The kind of the open form, and its place, from the address. */
export type PlaceQuery = z.infer<typeof querySchema>;

/** @returns null if the address opens no form. */
export function placeQuery(asked: Readonly<Record<string, string | string[] | undefined>>): PlaceQuery | null {
  const parsed = querySchema.safeParse(asked);
  return parsed.success ? parsed.data : null;
}
