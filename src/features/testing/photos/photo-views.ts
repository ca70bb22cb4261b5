// What photos of tests can be: apart from their schemas, which browsers need not read.

export const PHOTO_VIEWS = ["swatch", "front", "back", "side", "problem"] as const;

export type PhotoView = (typeof PHOTO_VIEWS)[number];

/** What photos of a designer's sample show. */
export const SAMPLE_VIEWS: readonly PhotoView[] = ["front", "back", "side", "swatch"];

/** What a tester may allow besides that the designer sees their photos. */
export const PHOTO_USES = ["pattern_page", "social_media"] as const;

export type PhotoUse = (typeof PHOTO_USES)[number];

/** The longer side of each stored size, px. */
export const PHOTO_SIZES = [320, 960, 1920] as const;

export type PhotoSize = (typeof PHOTO_SIZES)[number];

export const MAX_PHOTO_BYTES = 20_000_000;
export const MAX_PHOTO_PIXELS = 60_000_000;
export const MAX_PHOTOS = 24;
export const MAX_PHOTO_NOTE_LENGTH = 300;

/** Why a photo is not taken. */
export const PHOTO_PROBLEMS = ["empty", "many", "large", "closed", "none"] as const;

export type PhotoProblem = (typeof PHOTO_PROBLEMS)[number];
