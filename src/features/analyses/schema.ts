import { z } from "zod";
import { callResultsSchema, testerResultsSchema } from "@/engine/results";
import { pageNumberSchema } from "@/ui/page-number";

/** What each page of results reads of an analysis. */
export const PAGE_PARTS = {
  gaps: callResultsSchema.pick({ differences: true }),
  changes: callResultsSchema.pick({ differences: true, fit: true }),
  swatches: callResultsSchema.pick({ gauges: true }),
  testers: callResultsSchema.pick({ consistency: true }),
  doubtful: callResultsSchema.pick({ flagged: true }),
  yarn: callResultsSchema.pick({ yarn: true }),
  fit: callResultsSchema.pick({ differences: true, fit: true }),
  method: callResultsSchema.pick({ differences: true, method: true }),
} as const;

/** Up to so many testers are drawn and named one by one; more are summed up. */
export const MOST_NAMED = 40;

/** What each page reads of every tester's part. */
export const TESTER_PARTS = {
  gaps: testerResultsSchema.pick({ tester: true, driftAcross: true, driftAlong: true, readings: true }),
  swatches: testerResultsSchema.pick({ tester: true, size: true, swatches: true }),
  testers: testerResultsSchema.pick({
    ...{ tester: true, size: true, driftAcross: true, driftAlong: true, comparisons: true },
  }),
  yarn: testerResultsSchema.pick({ tester: true, size: true, yarn: true }),
  steps: testerResultsSchema.pick({ tester: true, size: true, readings: true }),
} as const;

export type PageParts<Page extends keyof typeof PAGE_PARTS> = z.output<(typeof PAGE_PARTS)[Page]>;

export type TesterParts<Page extends keyof typeof TESTER_PARTS> = z.output<(typeof TESTER_PARTS)[Page]> & {
  readonly name: string;
};

/** What a reader may ask to be shown of all cells. */
export const showSchema = z
  .enum(["off", "holds", "open", "none", "cause-1", "cause-2", "cause-3"])
  .optional()
  .catch(undefined);

export type Show = z.infer<typeof showSchema>;

/** Cells by how they stand. */
export type VerdictShow = Exclude<NonNullable<Show>, `cause-${number}`>;

/** The number of the cause whose cells are asked for, null where cells are asked for by how they stand. */
export function causeShown(show: NonNullable<Show>): number | null {
  return show.startsWith("cause-") ? Number(show.slice("cause-".length)) : null;
}

/** What the gap page's address may ask for; anything else is passed over. */
export const gapQuerySchema = z.object({
  view: z.enum(["rulers", "table"]).catch("rulers"),
  sort: z.enum(["pattern", "worst"]).catch("pattern"),
  show: showSchema,
  cell: z.string().optional().catch(undefined),
  page: pageNumberSchema,
  /** Which of the opened cell's testers. */
  testers: pageNumberSchema,
  saved: z.coerce.number().int().positive().optional().catch(undefined),
});

export type GapQuery = z.infer<typeof gapQuerySchema>;

/** What the address of a correction may ask for: a cell, or numbers that were typed for one. */
export const correctQuerySchema = z.object({
  cell: z.string().optional().catch(undefined),
  plan: z.uuid().optional().catch(undefined),
});

/** What the tester page's address may ask for. */
export const testersQuerySchema = z.object({
  view: z.enum(["pictures", "table"]).catch("pictures"),
  page: pageNumberSchema,
});

/** To what amounts of yarn to publish may be rounded up, metres or yards. */
export const ROUNDINGS = [5, 10, 25] as const;

/** What the yarn page's address may ask for. */
export const yarnQuerySchema = z.object({
  round: z.coerce.number().pipe(z.literal(ROUNDINGS)).catch(10),
});
