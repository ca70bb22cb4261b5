export { analyseCall } from "./analyse-call";
export {
  callResultsSchema,
  differencesSchema,
  leftOutSchema,
  type Consistency,
  type Differences,
  type FitResults,
  type FlaggedItem,
  type GaugeResults,
  type LeftOut,
  type MethodResults,
  type NamedCause,
  type YarnResults,
} from "./call-results-schema";
export {
  testerResultsSchema,
  type BlockedOtherwise,
  type ComparedMeasurement,
  type NotCounted,
  type TesterResults,
} from "./tester-results-schema";
export { runsOneWay } from "./consistency";
export { flaggedItems } from "./flagged-items";
export { namedCauses } from "./named-causes";
export { printResults } from "./print-results";
export { withoutUnusable } from "./unusable-reports";
