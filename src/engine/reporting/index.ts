export {
  CHOICES,
  fieldOf,
  keysOf,
  newKey,
  parseField,
  type FitPart,
  type ReadingPart,
  type SwatchPart,
  type TypedReport,
  type YarnPart,
} from "./fields";
export { BLOCKING_LABELS, blockedOtherwise } from "./blocking";
export type { FieldMessage, ReadReport, ReportContext, ReadingQuestion } from "./report-context";
export { toolText } from "./gauge-text";
export {
  answeredCounts,
  CORRECTION_ANSWERS,
  patternAsAnswered,
  type AnsweredCorrection,
  type CorrectionAnswer,
} from "./answered-counts";
export { readReport } from "./read-report";
export { fitAreas } from "./read-typed-garment";
export { typedOfReport } from "./typed-of-report";
export { nextStep, reportSteps, stepOf, type StepId, type StepState } from "./report-steps";
export { readingQuestions } from "./reading-questions";
export { settledCounts } from "./worked-questions";
export { bestTry, swatchOutlook, type SwatchOutlook } from "./swatch-outlook";
export { FIT_SCALE, fitScaleLabel } from "./fit-scale";
