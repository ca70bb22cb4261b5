export { faultSchema, formatPath, type Fault, type PathPart } from "./faults";
export {
  MAX_SIZES,
  PATTERN_FORMAT,
  patternDocumentSchema,
  patternShape,
  type CmBySize,
  type Count,
  type Fabric,
  type FlatTerm,
  type Grading,
  type Measurement,
  type PatternDocument,
  type Size,
  type Term,
  type Tie,
  type WorkedLength,
  countsOfTerm,
  measurementsOfCount,
} from "./pattern-document";
export {
  blockingSchema,
  CALL_FORMAT,
  CALL_FORMAT_2,
  callPriorSchema,
  callSchema,
  MAX_TESTERS,
  readingDecisionSchema,
  shownHabitsSchema,
  testerSchema,
  type CallDocument,
  type CallPrior,
  type CountedGauge,
  type Decision,
  type EarlierCall,
  type Places,
  type Reading,
  type ReadingDecision,
  type ShownHabits,
  type Swatch,
  type Tester,
  type TesterRecord,
} from "./call-document";
export { APPLICANTS_FORMAT, applicantsSchema, type ApplicantsDocument } from "./applicants-document";
export {
  parseApplicants,
  parseCall,
  parseCallInSteps,
  parsePattern,
  parseStoredPattern,
  parseWith,
  type Parsed,
} from "./parse-document";
export { isPlausible, PLAUSIBLE, rangeText, type PlausibleRange } from "./plausible-ranges";
export { patternRangeFaults, testerRangeFaults } from "./range-faults";
export { readJson, canonicalJson, isSameJson } from "./json";
export { callFaults, missingGrading, testerFaults } from "./call-faults";
export { patternFaults } from "./pattern-faults";
export {
  gradedCounts,
  gradedNumber,
  gradingRulesOf,
  meetsRule,
  type Requirement,
  type Rule,
  type WeightedNumber,
} from "./rules";
export { brokenTies, gradingWarnings, tieSides } from "./grading-warnings";
export { callFormatOf } from "./call-format";
export { countedCm, isSameDecision, usedCm, withUsedValues } from "./used-values";
export { cmOfSize, ownValue } from "./own-value";
export { lengthsOfTerm, patternOfPieces } from "./pattern-of-pieces";
export { withCounts } from "./with-counts";
export {
  documentParts,
  idSchema,
  labelSchema,
  NUMBER_RULES,
  textSchema,
  type PatternParts,
  type DeepReadonly,
} from "./schema-parts";
export { schemaFaults } from "./schema-faults";
export { sizeOrderFaults, sizeScale } from "./size-order";
export { PATTERN_FORMAT_1, patternDocument1Schema, patternShape1, type PatternDocument1 } from "./pattern-document-1";
export { patternSchema } from "./pattern-schema";
export {
  NO_GARMENT,
  type EdgeRef,
  type Garment,
  type GarmentPiece,
  type GarmentStep,
  type StepNumber,
  type StepOf,
  type StepPart,
  type StepPlace,
  type StepShape,
  type TypedGarment,
  type TypedStep,
  type Worked,
} from "./garment-document";
export { upgradePattern } from "./upgrade-pattern";
export {
  edgeMadeBy,
  edgeParts,
  homeOfStep,
  partsMadeBy,
  pieceOfParts,
  roundParts,
  stepsOfPiece,
} from "./garment-parts";
export { countsOfStep, lengthsOfStep, type PlacedNumber } from "./step-numbers";
export { statedGauge, type Gauge } from "./stated-gauge";
