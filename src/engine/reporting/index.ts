export {
  CHOICES,
  fieldOf,
  keysOf,
  newKey,
  parseField,
  type Field,
  type FitPart,
  type ReadingPart,
  type Repeated,
  type SwatchPart,
  type TypedReport,
  type YarnPart,
} from "./fields";
export type { FieldMessage, ReadReport, Report, ReportContext } from "./report-context";
export { readReport } from "./read-report";
export { fitAreas } from "./read-typed-garment";
export { typedOfReport } from "./typed-of-report";
export { nextStep, reportSteps, stepOf, type ReportStep, type StepId, type StepState } from "./report-steps";
export type { ReadingQuestion } from "./question";
export { readingQuestions } from "./reading-questions";
export { bestTry, swatchOutlook, type SwatchOutlook, type WorkedSoFar } from "./swatch-outlook";
export type { GaugeOutlook, MeasurementOutlook } from "./gauge-outlook";
export type { OutlookTexts } from "./outlook-texts";
export { FIT_SCALE, fitScaleLabel, type FitScale } from "./fit-scale";
