import type { NormalPrior } from "./cumulative-logit";

/*
 * What is expected of answers before a call has any, on the logistic scale, where an answer that spreads by 0.7 of a step
 * has steps 2.6 wide. All are common practice, no source; what each does is told in docs/method.md#fit.
 */

/** Logarithms of the distances from 0 to the inner thresholds, and from these to the outer ones. */
export const THRESHOLD_PRIORS: readonly NormalPrior[] = [
  { mean: Math.log(1.3), sd: 0.5 },
  { mean: Math.log(2.6), sd: 0.5 },
];

/** By how much a twentieth of the body moves what is felt: about one step. */
export const SLOPE_PRIOR: NormalPrior = { mean: 2.6, sd: 0.8 };

/** How much the slope of one part of the body differs from the others'. */
export const AREA_SLOPE_PRIOR: NormalPrior = { mean: 0, sd: 0.5 };

/** A tester who would like the garment looser feels the same ease tighter, by up to a step. */
export const PREFERS_PRIOR: NormalPrior = { mean: -1.3, sd: 0.8 };

/** Logarithm of how far testers differ from one another in all their answers: about a third of a step. */
export const PERSON_PRIOR: NormalPrior = { mean: Math.log(0.8), sd: 0.7 };

/** How far an area, or the sizes of it that depart, may be from "as wished": a step. */
export const LEVEL_SD = 2.6;

/** How far the sizes of an area that do not depart may be from "as wished": under a third of a step. */
export const OTHERS_SD = 0.8;
