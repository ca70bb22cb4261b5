import { MAX_PHOTO_BYTES, MAX_PHOTOS, type PhotoProblem, type PhotoUse, type PhotoView } from "./photo-views";

export const VIEW_LABELS: Readonly<Record<PhotoView, string>> = {
  swatch: "Swatch",
  front: "Front",
  back: "Back",
  side: "Side",
  problem: "Problem",
};

export const PROBLEM_SENTENCES: Readonly<Record<PhotoProblem, string>> = {
  none: "Choose at least one photo first.",
  empty: "This file is empty. Choose the photo again, or take a new one.",
  many: `You can send up to ${MAX_PHOTOS} photos. Delete one to send another.`,
  large: `This photo is larger than ${MAX_PHOTO_BYTES / 1e6} MB. Send a smaller copy.`,
  closed: "This test is closed or you have stopped, so no photos can be added.",
};

/** Uses in words, as in "may be used …". */
const USE_WORDS: Readonly<Record<PhotoUse, string>> = {
  pattern_page: "on the pattern’s page",
  social_media: "on social media",
};

/** What a designer may do with a tester's photos. @param creditName "" where they would not be named, null until they have said. */
export function allowedWords(uses: readonly PhotoUse[], creditName: string | null): string {
  if (uses.length === 0) return "For your eyes only";
  const where = uses.map((use) => USE_WORDS[use]).join(" and ");
  return `May be shown ${where}, ${creditName ? `credited as ${creditName}` : "without a name"}`;
}

/** What a photo of a designer's sample shows, for those who cannot see it. @param note the designer's own description, "" for none. */
export function sampleAlt({ view, note }: { readonly view: PhotoView; readonly note: string }, name: string): string {
  return note === "" ? `${name}: ${VIEW_LABELS[view].toLowerCase()}` : note;
}

interface WithdrawnUse {
  /** Null where nothing of the tester is stored any more. */
  readonly name: string | null;
  readonly use: PhotoUse;
  /** Of the one photo that they deleted; null where all their photos are meant. */
  readonly view: PhotoView | null;
}

/** What a designer has to do once a use is no longer allowed, or a photo that they might have used is deleted. */
export function withdrawalWords({ name, use, view }: WithdrawnUse): string {
  const who = name ?? "A tester who deleted their data";
  if (view !== null)
    return `${who} deleted a photo (${VIEW_LABELS[view].toLowerCase()}) that they had allowed ${USE_WORDS[use]}. Take it down where you used it.`;
  return `${who} no longer allows their photos ${USE_WORDS[use]}. Take them down where you used them.`;
}
