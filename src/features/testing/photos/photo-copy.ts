import { MAX_PHOTO_BYTES, MAX_PHOTOS, type PhotoProblem, type PhotoUse, type PhotoView } from "./photo-schema";

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

/** What a designer has to do once a use is no longer allowed. */
export function withdrawalWords(name: string | null, use: PhotoUse): string {
  const who = name ?? "A tester who deleted their data";
  return `${who} no longer allows their photos ${USE_WORDS[use]}. Take them down where you used them.`;
}
