export { predict, predictMeasurement, type MeasurementPrediction, type Prediction } from "./predict";
export { gaugeParts, measure, measureTerm, type FabricParts, type Split } from "./measure";
export { indexPattern, part, type PatternIndex } from "./pattern-index";
export { patternWorking, workedAtOwnGauge, workedAtStatedGauge, type Working } from "./working";
export { chooseSwatch } from "./choose-swatch";
export { statedGauge, swatchGauge, type Gauge } from "./gauge";
export { swatchUncertainty, type GaugeUncertainty } from "./swatch-uncertainty";
export { stitchesOfPiece } from "./stitches";
export { targetCm } from "./target";
