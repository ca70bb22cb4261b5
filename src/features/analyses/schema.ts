import { z } from "zod";
import type { GapsOutput } from "@/engine/gaps";

const numberOrNull = z.number().nullable();
const direction = z.enum(["stitches", "rows"]);

const causeInput = {
  kind: z.enum(["allowance", "settle", "stretch", "count", "offset", "step", "from"]),
  id: z.string(),
  fabric: z.string().optional(),
  direction: direction.optional(),
  size: z.string().optional(),
};

/** A stored analysis, read again: what the engine's `gaps` printed. */
export const gapsOutputSchema: z.ZodType<GapsOutput> = z.strictObject({
  cells: z.array(
    z.strictObject({
      size: z.string(),
      measurement: z.string(),
      reports: z.int(),
      gapCm: numberOrNull,
      standardErrorCm: numberOrNull,
      lowCm: numberOrNull,
      highCm: numberOrNull,
      chanceOff: numberOrNull,
      verdict: z.enum(["holds", "off", "leaning", "unsettled"]).nullable(),
      testersToSettle: numberOrNull,
    }),
  ),
  causes: z.array(
    z.strictObject({
      ...causeInput,
      estimate: z.number(),
      standardError: z.number(),
      unit: z.enum(["cm", "factor", "stitches", "rows"]),
      explains: z.number(),
      evidence: z.number(),
      rivals: z.array(z.strictObject({ ...causeInput, evidence: z.number(), tied: z.boolean() })),
    }),
  ),
  gauge: z.array(
    z.strictObject({
      fabric: z.string(),
      direction,
      stated: z.number(),
      robustMean: numberOrNull,
      robustSd: numberOrNull,
      testers: z.int(),
      verdict: z.enum(["as stated", "tighter", "looser", "unsettled"]),
    }),
  ),
  testers: z.array(
    z.strictObject({
      tester: z.string(),
      driftAcross: numberOrNull,
      driftAlong: numberOrNull,
      measurements: z.array(z.strictObject({ measurement: z.string(), h: numberOrNull, k: numberOrNull })),
    }),
  ),
  suspects: z.array(
    z.strictObject({
      tester: z.string(),
      what: z.enum(["reading", "swatch", "yarn"]),
      id: z.string(),
      value: z.number(),
      slip: z
        .enum([
          "inches-as-cm",
          "cm-as-inches",
          "half-girth",
          "twice-girth",
          "decimal",
          "swapped-letters",
          "stitches-for-rows",
          "ounces-as-grams",
          "neighbour-size",
          "ridges-as-rows",
        ])
        .nullable(),
      wouldBe: numberOrNull,
      setAside: z.boolean(),
    }),
  ),
  steps: z.array(
    z.strictObject({
      tester: z.string(),
      measurement: z.string(),
      targetCm: numberOrNull,
      designCm: z.number(),
      workedStepCm: z.number(),
      gaugeStepCm: z.number(),
      gapCm: z.number(),
      readingCm: z.number(),
    }),
  ),
  variances: z.strictObject({
    offset: numberOrNull,
    step: numberOrNull,
    cell: numberOrNull,
    driftAcross: numberOrNull,
    driftAlong: numberOrNull,
    residual: numberOrNull,
  }),
  status: z.enum(["converged", "stopped"]),
});

/** A cell as addresses name it: `m.bust`, the size first. Ids hold no dot. */
export function cellKey(size: string, measurement: string): string {
  return `${size}.${measurement}`;
}

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
  saved: z.coerce.number().int().positive().optional().catch(undefined),
});

export type GapQuery = z.infer<typeof gapQuerySchema>;

/** What the address of a correction may ask for, beside the numbers. */
export const correctQuerySchema = z.object({
  cell: z.string().optional().catch(undefined),
  base: z.coerce.number().int().optional().catch(undefined),
  reason: z.string().max(1_000).optional().catch(undefined),
  shown: z.literal("yes").optional().catch(undefined),
});

export type CorrectQuery = z.infer<typeof correctQuerySchema>;

/** What the tester page's address may ask for. */
export const testersQuerySchema = z.object({ view: z.enum(["pictures", "table"]).catch("pictures") });

/** To what amounts of yarn to publish may be rounded up, metres or yards. */
export const ROUNDINGS = [5, 10, 25] as const;

/** What the yarn page's address may ask for. */
export const yarnQuerySchema = z.object({
  round: z.coerce.number().pipe(z.literal(ROUNDINGS)).catch(10),
});
