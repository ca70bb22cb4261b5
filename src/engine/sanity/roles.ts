import type { Measurement } from "../pattern";
import { BODY } from "../trade-tables";

/*
 * A document does not say which of its measurements is an armhole. What can be known without reading words is the body
 * measurement that a target names, for our tables give the same one the same id in every pattern. Where a target is a
 * plain length, as armholes' and necks' mostly are, nothing but the label is left: then it must be one of a few whole
 * English names, so that "Length from armhole to hem" is none. Under any other name the remark stays away.
 */

const UPPER_ARM = /^(upper[ -]?arm|bicep)s?( (girth|around|circumference))?$/i;
const ARMHOLE = /^arm ?hole( (depth|height|girth|around|circumference))?$/i;
const NECK = /^(neck|neckline|neck ?band|collar)( (opening|edge|girth|around|circumference))*$/i;

const NECK_IDS: ReadonlySet<string> = new Set([BODY.neckBase.id, BODY.midNeck.id]);

/** The sleeve, all around at the upper arm. */
export function isUpperArmGirth({ girth, label, target }: Measurement): boolean {
  return girth === true && (bodyOf(target) === BODY.upperArm.id || UPPER_ARM.test(label.trim()));
}

/** How often a measurement goes into the armhole's girth: once where it is that, twice where it is its depth, else 0. */
export function timesInArmhole({ girth, label, target }: Measurement): 0 | 1 | 2 {
  if (bodyOf(target) !== BODY.armholeDepth.id && !ARMHOLE.test(label.trim())) return 0;
  return girth === true ? 1 : 2;
}

/** The edge of the neck, all around. */
export function isNeckGirth({ girth, label, target }: Measurement): boolean {
  return girth === true && (NECK_IDS.has(bodyOf(target) ?? "") || NECK.test(label.trim()));
}

/** The body measurement that a target takes whole; undefined where it takes a share, or a plain length. */
export function wholeBodyOf({ target }: Measurement): string | undefined {
  return target !== undefined && "body" in target && (target.share ?? 1) === 1 ? target.body : undefined;
}

function bodyOf(target: Measurement["target"]): string | undefined {
  return target !== undefined && "body" in target ? target.body : undefined;
}
