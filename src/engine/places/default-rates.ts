/** Share of the invited who do not report, until a designer has a record of their own; common practice, no source (docs/method.md#invitations). */
export const DEFAULT_DROPOUT_RATE = 0.3;

/** Probability with which enough of the invited should finish. */
export const DEFAULT_CONFIDENCE = 0.8;
