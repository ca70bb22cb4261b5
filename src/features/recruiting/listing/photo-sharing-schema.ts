import { z } from "zod";

/** From when on testers may show photos. */
export const sharingSchema = z.enum(["never", "release", "any"]);

export type Sharing = z.infer<typeof sharingSchema>;

/** What an agreement says about photos; null where only its text does. */
export interface PhotoSharing {
  readonly progressPhotos: Sharing | null;
  readonly finishedPhotos: Sharing | null;
}

/** Names of the form's fields that say it. */
export const SHARING_FIELDS = ["progressPhotos", "finishedPhotos"] as const;

const PHOTOS = { progressPhotos: "photos of my work in progress", finishedPhotos: "photos of the finished garment" };

/** What applicants agree to as a whole: the designer's own text, then what may be shown and from when. */
export function wholeAgreement(ownText: string, sharing: PhotoSharing): string {
  const said = SHARING_FIELDS.flatMap((field) => {
    const from = sharing[field];
    return from === null ? [] : [sharingSentence(PHOTOS[field], from)];
  });
  if (said.length === 0) return ownText;
  return [ownText, [...said, "I will never show the pattern’s text, charts or numbers."].join(" ")].join("\n\n");
}

function sharingSentence(photos: string, from: Sharing): string {
  switch (from) {
    case "never":
      return `I will not show ${photos} to others.`;
    case "release":
      return `I will show ${photos} only once the pattern is released.`;
    case "any":
      return `I may show ${photos} at any time.`;
  }
}
