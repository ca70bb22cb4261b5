import { createHash } from "node:crypto";
import { z } from "zod";
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
    file instanceof File ? [{ file, photo: sentPhotoSchema.parse({ ...fields, photoId: idOf(formKey, index) }) }] : [],
  );
  return { testerId: fields.testerId, photos };
}

function textIn(form: FormData, name: string): string | undefined {
  const value = form.get(name);
  return typeof value === "string" ? value : undefined;
}

/** The same for the same form, so that one sent twice is stored once. */
function idOf(formKey: string, index: number): string {
  const hex = createHash("sha256").update(`${formKey} ${index}`).digest("hex");
  // RFC 9562, 5.8: a UUID of our own making.
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-a${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
