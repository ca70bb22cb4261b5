/** Share of the invited who do not come to report, until a designer's own record says otherwise; common practice, no source (docs/method.md#invitations). */
export const USUAL_LOSS = 0.3;

/** How surely enough of the invited are to finish: four times in five. */
export const USUAL_CHANCE = 0.8;
