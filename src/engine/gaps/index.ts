export { gaps } from "./gaps";
export type {
  Cause,
  CauseInput,
  CauseKind,
  Cell,
  GapsOutput,
  GaugeFinding,
  Slip,
  Step,
  Suspect,
  TesterFinding,
  Variances,
  Verdict,
} from "./gaps-output";
export { countedReadings, isCounted, type CountedReading } from "./counted-readings";
