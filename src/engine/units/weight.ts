/** Grams in an avoirdupois ounce, exact: 453.59237 ÷ 16 (international yard and pound agreement, 1959). */
export const GRAMS_PER_OUNCE = 28.349523125;

/** Metres in an international yard, exact by definition (agreement of 1959). */
export const METRES_PER_YARD = 0.9144;
