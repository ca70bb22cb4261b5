import type { PatternDocument } from "@/engine/pattern";

/** How long an invitation is valid by default; common practice, no source. */
export const DAYS_TO_ANSWER = 3;

/** From the start until a swatch is due, and a report: four weeks for a crocheted garment, seven for a knitted one; common practice, no source. */
const DAYS_TO_SWATCH = 7;
const DAYS_TO_REPORT: Readonly<Record<PatternDocument["craft"], number>> = { crochet: 28, knitting: 49 };

const DAY_MS = 24 * 60 * 60 * 1_000;

/**
 * The deadlines of a test that starts on a day, unless the designer types others.
 *
 * @param startOn such as `2027-03-14`.
 * @returns null where that is no day.
 */
export function usualDeadlines(
  startOn: string,
  craft: PatternDocument["craft"],
): { readonly swatchBy: string; readonly reportBy: string } | null {
  const start = Date.parse(startOn);
  if (Number.isNaN(start)) return null;
  const dayAfter = (days: number) => new Date(start + days * DAY_MS).toISOString().slice(0, 10);
  return { swatchBy: dayAfter(DAYS_TO_SWATCH), reportBy: dayAfter(DAYS_TO_REPORT[craft]) };
}
