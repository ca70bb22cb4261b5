import { z } from "zod";
import { idempotencyKey } from "@/server/idempotency-key";
import { PHOTO_VIEWS, sentPhotoSchema, type SentPhoto } from "./photo-schema";

const formSchema = z.object({
  testerId: z.uuid(),
  formKey: z.uuid(),
  view: z.enum(PHOTO_VIEWS),
  note: z.string().optional(),
});

export interface SentForm {
  readonly testerId: string;
  readonly photos: readonly { readonly photo: SentPhoto; readonly file: File }[];
}

/** Reads the form of a page without scripts. @returns null where it is none of ours. */
export function sentForm(form: FormData): SentForm | null {
  const texts = Object.fromEntries(["testerId", "formKey", "view", "note"].map((name) => [name, textIn(form, name)]));
  const parsed = formSchema.safeParse(texts);
  if (!parsed.success) return null;
  const { formKey, ...fields } = parsed.data;
  const files = form.getAll("photo").filter((file) => file instanceof File && (file.size > 0 || file.name !== ""));
  const photos = files.flatMap((file, index) =>
    file instanceof File
      ? [{ file, photo: sentPhotoSchema.parse({ ...fields, photoId: idempotencyKey(formKey, String(index)) }) }]
      : [],
  );
  return { testerId: fields.testerId, photos };
}

function textIn(form: FormData, name: string): string | undefined {
  const value = form.get(name);
  return typeof value === "string" ? value : undefined;
}
