import { z } from "zod";
import {
  causeShape,
  cellSchema,
  gaugeFindingShape,
  nextQuestionSchema,
  rivalShape,
  searchStatusSchema,
  stepSchema,
  outlierSchema,
  variancesSchema,
} from "../gaps";
import { readingDecisionSchema, testerSchema } from "../pattern";
import { testerResultsSchema } from "./tester-results-schema";

const swatchSchema = testerSchema.shape.swatches.element;
const cm = z.number();
const numberOrNull = z.number().nullable();

/** An input that may be wrong, with what a designer needs to know of it before they accept it. */
const proposalShape = {
  /** Measurements that it moves and whose counts can be solved for again. */
  solvable: z.array(z.string()),
};

/** A cause as results show it: what it moves, and which rule of the pattern its number would break. */
const namedCauseSchema = z.strictObject({
  ...causeShape,
  ...proposalShape,
  /** Change of each cell for one unit of the cause, cm, sizes first; empty where it moves nothing. */
  movesCm: z.array(cm),
  /** The first rule that the grading breaks with the number that was really worked; null where it breaks none. */
  breaks: z.string().nullable(),
  rivals: z.array(z.strictObject({ ...rivalShape, ...proposalShape })),
});

/** Cells by size and measurement, and what explains them. */
export const differencesSchema = z.strictObject({
  cells: z.array(cellSchema),
  causes: z.array(namedCauseSchema),
  /** Most useful first; none in results of before. */
  askNext: z.array(nextQuestionSchema).default([]),
  /** Testers with a report that was analysed, by size in the pattern's order. */
  testersBySize: z.array(z.int()),
  status: searchStatusSchema,
});

/** The stated gauges beside the swatches, and what is to be said of all of these. */
const gaugesSchema = z.strictObject({
  findings: z.array(
    z.strictObject({
      ...gaugeFindingShape,
      /** Bars of equal width from the least, over `GAUGE_WIDTH_CM`; the outermost hold whatever lies beyond. */
      bars: z.strictObject({ from: z.number(), width: z.number(), counts: z.array(z.int()) }),
    }),
  ),
  /** In the pattern's order. */
  fabrics: z.array(
    z.strictObject({
      fabric: z.string(),
      swatches: z.int(),
      /** Swatches that were made with another tool than the stated one. */
      otherTools: z.array(z.strictObject({ toolMm: z.number(), swatches: z.int() })),
      /** Length after blocking ÷ before, on average over swatches that were counted before, too; left out where none was. */
      growth: z.strictObject({ across: z.number(), along: z.number(), swatches: z.int() }).optional(),
      /** Testers who made none that counts. */
      without: z.array(z.string()),
    }),
  ),
});

/** Mandel's limits for as many testers as measured the most measured point. */
const consistencySchema = z.strictObject({
  /** Null where nobody can be compared. */
  limits: z.strictObject({ testers: z.int(), unusual: z.number(), rare: z.number() }).nullable(),
  /** The largest |h| of anybody. */
  furthest: z.number(),
  /** Testers of whom something lies beyond what one in a hundred passes by chance, or all of it runs one way or is probably wrong. */
  standOut: z.array(z.string()),
  /** Testers all of whose readings are as likely mistakes as not, with the chance; none in results of before. */
  doubted: z.array(z.strictObject({ tester: z.string(), chance: z.number() })).default([]),
});

/** A number of a report that is flagged or that a person has decided on. */
const flaggedItemSchema = z.strictObject({
  tester: z.string(),
  size: z.string(),
  part: z.enum(["swatches", "readings", "yarn"]),
  position: z.int(),
  /** Id of the measurement, the fabric or the yarn. */
  of: z.string(),
  suspect: outlierSchema.nullable(),
  /** Of a reading also the value, in cm, that a person uses in the reported one's place. */
  decision: readingDecisionSchema.nullable(),
  counts: z.boolean(),
  /** What was reported: a length in cm, a weight in g, or a swatch. */
  value: z.union([
    z.strictObject({ cm }),
    z.strictObject({ grams: z.number() }),
    z.strictObject({ swatch: swatchSchema }),
  ]),
});

const flaggedSchema = z.array(flaggedItemSchema);

/** The yarn of each size, at the pattern's gauge. */
const yarnResultsSchema = z.array(
  z.strictObject({
    yarn: z.string(),
    ratio: numberOrNull,
    standardError: numberOrNull,
    fabrics: z.array(z.strictObject({ fabric: z.string(), ratio: z.number(), metresPerStitch: z.number() })),
    sizes: z.array(
      z.strictObject({
        size: z.string(),
        stitches: z.number(),
        expectedMetres: numberOrNull,
        upperMetres: numberOrNull,
        publishMetres: numberOrNull,
        balls: z.int().nullable(),
        reports: z.int(),
        /** What testers used, without what is set aside; null where nobody told. */
        used: z.strictObject({ testers: z.int(), leastMetres: z.number(), mostMetres: z.number() }).nullable(),
      }),
    ),
    suspects: z.array(outlierSchema),
  }),
);

/** What testers say of the fit. */
const fitResultsSchema = z.strictObject({
  /** Answers from far too tight to far too loose, by area and by size in the pattern's order. */
  areas: z.array(z.strictObject({ area: z.string(), answersBySize: z.array(z.array(z.int()).length(5)) })),
  findings: z.array(
    z.strictObject({
      measurement: z.string(),
      area: z.string(),
      feels: z.enum(["tight", "loose"]),
      from: z.string(),
      to: z.string(),
      /** Sizes between which it begins, and between which it ends. */
      begins: z.strictObject({ earliest: z.string(), latest: z.string() }),
      ends: z.strictObject({ earliest: z.string(), latest: z.string() }),
      agree: z.int(),
      testers: z.int(),
      chance: z.number(),
    }),
  ),
  /** By area with a target and answers: the ease that feels right in each size, in the pattern's order. */
  eases: z.array(
    z.strictObject({
      area: z.string(),
      measurement: z.string(),
      sizes: z.array(
        z.strictObject({
          size: z.string(),
          plannedCm: cm,
          rightCm: numberOrNull,
          lowCm: numberOrNull,
          highCm: numberOrNull,
          wishedWithinCm: numberOrNull,
        }),
      ),
    }),
  ),
});

const predictionSchema = z.strictObject({
  measurement: z.string(),
  targetCm: numberOrNull,
  designCm: cm,
  workedCm: cm,
  predictedCm: cm,
  standardUncertaintyCm: cm,
  spreadCm: cm,
  acrossCm: cm,
  alongCm: cm,
  restCm: cm,
});

/** The numbers of the page that explains the method. */
const methodResultsSchema = z.strictObject({
  variances: variancesSchema,
  /** All that the engine flags, also what is told of a whole report. */
  suspects: z.array(outlierSchema),
  /** Inputs of the pattern that were tried as causes. */
  candidates: z.int(),
  readings: z.strictObject({
    all: z.int(),
    counted: z.int(),
    left: z.strictObject({ changed: z.int(), unwashed: z.int(), "set-aside": z.int(), slip: z.int() }),
  }),
  /** One reading to follow step by step; null where none has a swatch behind it. */
  example: z
    .strictObject({
      tester: z.string(),
      size: z.string(),
      measurement: z.string(),
      swatches: z.array(z.strictObject({ fabric: z.string(), swatch: swatchSchema })),
      prediction: predictionSchema,
      step: stepSchema,
      readings: z.int(),
    })
    .nullable(),
  /** The cell whose plain average misleads most; null where no cell has two reports. */
  plainAverage: z
    .strictObject({
      size: z.string(),
      measurement: z.string(),
      testers: z.array(z.strictObject({ tester: z.string(), crudeCm: cm, gapCm: cm })),
      crudeCm: cm,
      gaugedCm: cm,
      estimateCm: cm,
      lowCm: cm,
      highCm: cm,
    })
    .nullable(),
});

/** A report that could not be analysed, and why. */
export const leftOutSchema = z.array(z.strictObject({ tester: z.string(), message: z.string() }));

/** All that pages of results show of a call, each part for the pages that need it. */
export const callResultsSchema = z.strictObject({
  differences: differencesSchema,
  gauges: gaugesSchema,
  consistency: consistencySchema,
  flagged: flaggedSchema,
  yarn: yarnResultsSchema,
  fit: fitResultsSchema,
  method: methodResultsSchema,
  testers: z.array(testerResultsSchema),
  leftOut: leftOutSchema,
});

export type CallResults = z.infer<typeof callResultsSchema>;
export type Differences = z.infer<typeof differencesSchema>;
export type NamedCause = Differences["causes"][number];
export type GaugeResults = z.infer<typeof gaugesSchema>;
export type Consistency = z.infer<typeof consistencySchema>;
export type FlaggedItem = z.infer<typeof flaggedItemSchema>;
export type YarnResults = z.infer<typeof yarnResultsSchema>;
export type FitResults = z.infer<typeof fitResultsSchema>;
export type MethodResults = z.infer<typeof methodResultsSchema>;
export type LeftOut = z.infer<typeof leftOutSchema>[number];
