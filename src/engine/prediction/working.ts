import { cmOfSize, ownValue, statedGauge, type Gauge, type Tester } from "../pattern";
import { chooseSwatch, swatchGauge } from "./gauge";
import { growthOfTester } from "./growth";
import { gradedValue, part, type PatternIndex } from "./pattern-index";

/** The numbers a garment is worked from: counts, lengths (cm) and gauges, by id. Allowances are always the pattern's. */
export interface Working {
  readonly size: string;
  readonly countOf: (id: string) => number;
  readonly lengthCmOf: (id: string) => number;
  readonly gaugeOf: (fabric: string) => Gauge;
  /** Length after blocking ÷ before, in the direction of the rows; null where only the pattern says. */
  readonly growthOf: (fabric: string) => number | null;
}

/**
 * A size as the pattern has it: graded counts, stated lengths and gauges.
 *
 * @throws {RangeError} on a count without a value in that size, which `missingGrading` reports beforehand.
 */
export function patternWorking(index: PatternIndex, size: string): Working {
  return {
    size,
    countOf: (id) => {
      const value = gradedValue(index, id, size);
      if (value === undefined) throw new RangeError(`count ${id} has no value in size ${size}`);
      return value;
    },
    lengthCmOf: (id) => cmOfSize(part(index.lengths, id).cm, size),
    gaugeOf: (fabric) => statedGauge(part(index.fabrics, fabric)),
    growthOf: () => null,
  };
}

/** What the tester worked, at the pattern's gauge: the reported counts and lengths, the pattern's where none is reported. */
export function workedAtStatedGauge(index: PatternIndex, tester: Tester): Working {
  const design = patternWorking(index, tester.size);
  return {
    ...design,
    countOf: (id) => ownValue(tester.worked, id) ?? design.countOf(id),
    lengthCmOf: (id) => ownValue(tester.workedLengths, id) ?? design.lengthCmOf(id),
  };
}

/** What the tester worked, at the tester's gauge and blocked as theirs; the pattern's gauge in fabrics without a swatch. */
export function workedAtOwnGauge(index: PatternIndex, tester: Tester): Working {
  const worked = workedAtStatedGauge(index, tester);
  return {
    ...worked,
    gaugeOf: (fabric) => {
      const swatch = chooseSwatch(tester.swatches, fabric);
      return swatch ? swatchGauge(swatch) : worked.gaugeOf(fabric);
    },
    growthOf: (fabric) => growthOfTester(index, tester, fabric)?.along ?? null,
  };
}
