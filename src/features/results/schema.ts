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

/** Up to this many testers are drawn and named one by one; more are summarised. */
export const MAX_NAMED = 40;

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

/** Which cells a reader may filter for. */
const showSchema = z
  .enum(["off", "holds", "open", "none", "cause-1", "cause-2", "cause-3"])
  .optional()
  .catch(undefined);

export type Show = z.infer<typeof showSchema>;

/** The filters by verdict. */
export type VerdictShow = Exclude<NonNullable<Show>, `cause-${number}`>;

/** The number of the cause to filter by; null for a filter by verdict. */
export function causeShown(show: NonNullable<Show>): number | null {
  return show.startsWith("cause-") ? Number(show.slice("cause-".length)) : null;
}

/** The query of the Differences page; anything else is ignored. */
export const gapQuerySchema = z.object({
  view: z.enum(["rulers", "table"]).catch("rulers"),
  sort: z.enum(["pattern", "worst"]).catch("pattern"),
  show: showSchema,
  cell: z.string().optional().catch(undefined),
  page: pageNumberSchema,
  /** Page of the open cell's testers. */
  testers: pageNumberSchema,
  saved: z.coerce.number().int().positive().optional().catch(undefined),
});

export type GapQuery = z.infer<typeof gapQuerySchema>;

/** The query of the correction page: a cell, or a plan of typed numbers. */
export const correctQuerySchema = z.object({
  cell: z.string().optional().catch(undefined),
  plan: z.uuid().optional().catch(undefined),
});

/** The query of the page of measuring habits. */
export const testersQuerySchema = z.object({
  view: z.enum(["pictures", "table"]).catch("pictures"),
  page: pageNumberSchema,
});

/** The multiples that amounts of yarn can be rounded up to, metres or yards. */
export const ROUNDINGS = [5, 10, 25] as const;

/** The query of the yarn page. */
export const yarnQuerySchema = z.object({
  round: z.coerce.number().pipe(z.literal(ROUNDINGS)).catch(10),
});
