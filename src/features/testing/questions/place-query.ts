import { z } from "zod";

type Asked = Readonly<Record<string, string | string[] | undefined>>;

const querySchema = z.object({ place: z.string(), say: z.enum(["question", "trouble"]) });

/** The kind of the open form, and its place, from the address. */
export type PlaceQuery = z.infer<typeof querySchema>;

/** @returns null if the address opens no form. */
export function placeQuery(asked: Asked): PlaceQuery | null {
  const parsed = querySchema.safeParse(asked);
  return parsed.success ? parsed.data : null;
}

const photoSchema = z.object({ photo: z.uuid() });

/** @returns the trouble spot for which the address opens a form for photos; null for none. */
export function photoQuery(asked: Asked): string | null {
  return photoSchema.safeParse(asked).data?.photo ?? null;
}
