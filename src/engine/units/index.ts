export { CM_PER_INCH, fromCm, toCm, type LengthUnit } from "./length";
export { parseLength } from "./parse-length";
export { parseNumber } from "./parse-number";
export { FOUR_INCHES_CM, GAUGE_WIDTH_CM, gaugeOver, lengthOfCount } from "./gauge";
export { readingStep, combinedUncertainty, rectangularUncertainty } from "./uncertainty";
export { roundToSum } from "./round-to-sum";
export { GRAMS_PER_OUNCE, METRES_PER_YARD } from "./weight";
