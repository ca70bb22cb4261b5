/** What a tester does once their swatch is sent, as the designer reads it among their updates. */
export const SWATCH_PLANS = {
  start: { label: "I start the garment with this gauge", status: "track", note: "Swatch sent; starting the garment." },
  again: { label: "I make another swatch first", status: "track", note: "Swatch sent; making another one." },
  wait: {
    label: "I wait for an answer before I start",
    status: "stuck",
    note: "Swatch sent; waiting for your answer.",
  },
} as const;

export type SwatchPlan = keyof typeof SWATCH_PLANS;
