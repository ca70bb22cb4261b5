export { predict, predictStitches, type MeasurementPrediction, type Prediction } from "./predict";
export { gaugeParts, measure, measureTerm, type Split, targetCm } from "./measure";
export { indexPattern, part, type PatternIndex } from "./pattern-index";
export { patternWorking, workedAtOwnGauge, type Working } from "./working";
export { workedStitches } from "./worked-stitches";
export { chooseSwatch, swatchGauge } from "./gauge";
export {
  garmentGaugeUncertainty,
  isBlockedOtherwise,
  swatchUncertainty,
  type GaugeUncertainty,
} from "./swatch-uncertainty";
export { fabricGrowths, growthOfTester, swatchGrowth } from "./growth";
export { parsePredictInput } from "./predict-input";
export { explainMeasurement, type ExplainedFlat, type ExplainedTerm, type Explanation } from "./explain-measurement";
export { finishedMeasurements, type FinishedMeasurement } from "./finished-measurements";
