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
export type { FieldSentence, ReadReport, Report, ReportContext } from "./report-context";
export { readReport } from "./read-report";
export { fitAreas } from "./read-typed-garment";
export { typedOfReport } from "./typed-of-report";
