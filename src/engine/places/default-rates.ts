/** Share of the invited who do not come to report, until a designer's own record says otherwise; common practice, no source (design 4.3). */
export const DEFAULT_DROPOUT_RATE = 0.3;

/** How surely enough of the invited are to finish: four times in five. */
export const DEFAULT_CONFIDENCE = 0.8;
