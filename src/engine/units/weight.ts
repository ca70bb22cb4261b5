/** Grams in an avoirdupois ounce, exact: 453.59237 ÷ 16 (international yard and pound agreement, 1959). */
export const GRAMS_PER_OUNCE = 28.349523125;
