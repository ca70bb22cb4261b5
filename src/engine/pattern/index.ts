export { faultSchema, formatPath, type Fault, type PathPart } from "./faults";
export {
  MAX_SIZES,
  PATTERN_FORMAT,
  patternSchema,
  patternShape,
  type CmBySize,
  type Count,
  type Fabric,
  type FlatTerm,
  type Grading,
  type Measurement,
  type PatternDocument,
  type Piece,
  type Size,
  type Term,
  type Tie,
} from "./pattern-document";
export {
  CALL_FORMAT,
  CALL_FORMAT_2,
  callSchema,
  MAX_TESTERS,
  readingDecisionSchema,
  testerSchema,
  type CallDocument,
  type Decision,
  type Places,
  type Reading,
  type ReadingDecision,
  type Swatch,
  type Tester,
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
export { readJson } from "./read-json";
export { callFaults, missingGrading, testerFaults } from "./call-faults";
export { patternFaults } from "./pattern-faults";
export { gradedCounts } from "./graded-counts";
export { brokenTies, gradingWarnings, tieSides } from "./grading-warnings";
export { gradedNumber, gradingRulesOf, type Rule } from "./rules";
export { callFormatOf } from "./call-format";
export { countedCm, isSameDecision, usedCm, withUsedValues } from "./used-values";
export { canonicalJson } from "./canonical-json";
export { cmOfSize } from "./by-size";
export { countsOfTerm } from "./counts-of-term";
export { ownValue } from "./own-value";
export { documentParts, idSchema, labelSchema, NUMBER_RULES, textSchema, type PatternParts } from "./schema-parts";
export { schemaFaults } from "./schema-faults";
export type { DeepReadonly } from "./deep-readonly";
export { sizeOrderFaults } from "./size-order-faults";
export { sizeScale } from "./size-scale";
