import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { ReadableStream } from "node:stream/web";
import busboy from "busboy";
import { z } from "zod";
import { idempotencyKey } from "@/server/idempotency-key";
import { photoOwnerIdSchema, sentPhotoSchema, type PhotoOwnerId, type SentPhoto } from "./photo-schema";
import { MAX_PHOTO_NOTE_LENGTH, MAX_PHOTOS, PHOTO_VIEWS } from "./photo-views";

const formSchema = z.intersection(
  photoOwnerIdSchema,
  z.object({
    formKey: z.uuid(),
    view: z.enum(PHOTO_VIEWS),
    note: z.string().optional(),
    troubleId: z.uuid().optional(),
  }),
);

/** One of the photos in a form. */
export interface PhotoInForm {
  readonly owner: PhotoOwnerId;
  readonly photo: SentPhoto;
  readonly body: AsyncIterable<Uint8Array>;
}

/**
 * Reads the form of a page without scripts as it arrives, so that no photo is held in memory. Our form has its fields before
 * its photos.
 *
 * @param receive takes one photo after another.
 * @returns whose photos they are; null where it is no form of ours.
 */
export async function readSentForm(
  request: Request,
  receive: (photo: PhotoInForm) => Promise<void>,
): Promise<PhotoOwnerId | null> {
  const texts: Record<string, string> = {};
  let index = 0;
  let received = Promise.resolve();
  const parser = busboy({
    headers: { "content-type": request.headers.get("content-type") ?? "" },
    limits: { fields: 20, fieldSize: 4 * MAX_PHOTO_NOTE_LENGTH, files: 2 * MAX_PHOTOS },
  });
  parser.on("field", (name, value) => void (texts[name] = value));
  parser.on("file", (name, file, { filename }) => {
    const form = formSchema.safeParse(texts);
    if (name !== "photo" || !filename || !form.success) return void file.resume();
    const photoId = idempotencyKey(form.data.formKey, String(index));
    index += 1;
    const photo = sentPhotoSchema.parse({ ...form.data, photoId });
    const owner = photoOwnerIdSchema.parse(form.data);
    const body: AsyncIterable<Uint8Array> = file.iterator({ destroyOnReturn: false });
    // What is not read of it would hold up the rest.
    received = received.then(() => receive({ owner, photo, body })).finally(() => file.resume());
    received.catch(() => undefined);
  });
  if (request.body === null) return null;
  await pipeline(Readable.fromWeb(request.body as ReadableStream<Uint8Array>), parser);
  await received;
  return formSchema.safeParse(texts).data ?? null;
}
