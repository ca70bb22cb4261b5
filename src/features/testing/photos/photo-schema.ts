import { z } from "zod";
import { pageNumberSchema } from "@/ui/page-number";
import { MAX_PHOTO_NOTE_LENGTH, PHOTO_PROBLEMS, PHOTO_SIZES, PHOTO_VIEWS } from "./photo-views";

/** Whose photo it is: a tester's, or of the sample of a pattern. */
export const photoOwnerIdSchema = z.union([z.object({ testerId: z.uuid() }), z.object({ patternId: z.uuid() })]);

export type PhotoOwnerId = z.infer<typeof photoOwnerIdSchema>;

/** A photo as it is sent: what stands beside its bytes. */
export const sentPhotoSchema = z.object({
  photoId: z.uuid(),
  view: z.enum(PHOTO_VIEWS),
  note: z.string().default("").transform(photoNote),
  /** The trouble spot of theirs that a photo of a problem shows; left out for none. */
  troubleId: z.uuid().optional(),
});

export type SentPhoto = z.infer<typeof sentPhotoSchema>;

/** A text as it is stored beside a photo: one line, not too long. */
export function photoNote(text: string): string {
  return text
    .toWellFormed()
    .replaceAll(/[\0\s]+/g, " ")
    .trim()
    .slice(0, MAX_PHOTO_NOTE_LENGTH);
}

/** The query of a stored photo's address. */
export const photoSizeSchema = z
  .object({ size: z.coerce.number().pipe(z.literal([...PHOTO_SIZES])) })
  .catch({ size: PHOTO_SIZES[1] });

/** The query of the designer's page; unknown values are ignored. */
export const photoSheetQuerySchema = z.object({
  size: z.string().max(200).optional().catch(undefined),
  view: z.enum(PHOTO_VIEWS).optional().catch(undefined),
  page: pageNumberSchema,
});

export type PhotoSheetQuery = z.infer<typeof photoSheetQuerySchema>;

/** The query of a page on which photos are sent. */
export const ownPhotosQuerySchema = z.object({ problem: z.enum(PHOTO_PROBLEMS).optional().catch(undefined) });
