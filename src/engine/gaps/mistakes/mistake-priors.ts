/** Chance before any reading that one is a mistake, as a Beta distribution, and how far off a mistake may be. */
export interface MistakePrior {
  readonly mistakes: number;
  readonly sound: number;
}

/** Of one reading, one swatch's direction, one whole tester (docs/method.md#mistakes). */
export const MISTAKE_PRIORS = {
  reading: { mistakes: 2, sound: 160 },
  swatch: { mistakes: 2, sound: 120 },
  tester: { mistakes: 2, sound: 120 },
} satisfies Record<string, MistakePrior>;

export type MistakeKind = keyof typeof MISTAKE_PRIORS;

/** Standard deviation of a reading that is a mistake, tolerances. */
export const WRONG_READING_SD = 4;
/** Relative standard deviation of the gauge of a swatch that is a mistake. */
export const WRONG_SWATCH_SD = 0.12;
/** Relative standard deviation of every reading of a tester who is wholly wrong. */
export const WRONG_TESTER_SD = 0.1;
