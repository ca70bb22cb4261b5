import { at } from "../../linear-algebra";
import type { EarlierCall, ShownHabits } from "../../pattern";
import { blockInFit, openFit } from "../carriers/block-in-fit";
import { fitGapSurface } from "../model/fit-gap-surface";
import { gapReadings } from "../model/gap-readings";
import { gapPriors, SD_INDEX } from "../model/gap-sds";
import { testerPlaces } from "../model/tester-places";
import type { BlockInAll } from "../../variance-components";
import type { TesterBlock } from "../mistakes/mistakes";
import { screenOutliers } from "../outliers/screen-outliers";
import { OWN_DRIFT_SHARE } from "./tester-habits";

type ShownDrift = ShownHabits["across"];

/** A record holds no ratio further off: so few readings do not show more. */
const MAX_LOG_RATIO = 1;
const NOTHING: ShownDrift = { offset: 0, weight: 0 };

/**
 * What a call shows of some of its testers: their tapes, and how their garments came out beside their swatches. The model without
 * causes is fitted to the call alone; what its priors brought is in none of it.
 *
 * @param call parsed, on its own.
 * @param testers ids.
 * @returns by tester id; those without counted readings have none.
 * @see docs/method.md#a-testers-record.
 */
export function shownHabits(call: EarlierCall, testers: ReadonlySet<string>): ReadonlyMap<string, ShownHabits> {
  const found = gapReadings(screenOutliers(call).call);
  if (found.testers.length === 0) return new Map();
  const { pattern } = call;
  const fit = fitGapSurface({ pattern, readings: found.readings, causes: [], priors: gapPriors(undefined) });
  const opened = openFit(fit);
  return new Map(
    testerPlaces(found.testers).flatMap(({ gaps: { tester }, size, block: which }) => {
      const block = fit.readings.groups[size]?.blocks[which];
      const inFit = testers.has(tester.id) ? blockInFit(opened, size, which) : null;
      if (block === undefined || inFit === null) return [];
      return [[tester.id, habitsOf(block, inFit.inAll, fit.sds)] as const];
    }),
  );
}

function habitsOf(block: TesterBlock, inAll: BlockInAll, sds: Float64Array): ShownHabits {
  return {
    tape: shownTape(block, inAll, at(sds, SD_INDEX.residual) ** 2),
    across: shownDrift(block, inAll, { sd: SD_INDEX.driftAcross, variance: at(sds, SD_INDEX.driftAcross) ** 2 }),
    along: shownDrift(block, inAll, { sd: SD_INDEX.driftAlong, variance: at(sds, SD_INDEX.driftAlong) ** 2 }),
  };
}

/**
 * Of a factor κ on the tester's reading errors, sᵢ their variances: at κ = 1 the log likelihood has the slope Σ sᵢ(rᵢ² − Pᵢᵢ) by ln κ and
 * the information 2 ΣΣ sᵢsⱼPᵢⱼ²; the ratio of the two sums is where readings and their expectation would agree.
 */
function shownTape({ residualShares }: TesterBlock, { precision, right }: BlockInAll, residual: number) {
  const count = right.length;
  let squares = 0;
  let expected = 0;
  let weight = 0;
  for (let i = 0; i < count; i += 1) {
    const own = residual * at(residualShares, i);
    squares += own * at(right, i) ** 2;
    expected += own * at(precision, i * count + i);
    for (let j = 0; j < count; j += 1)
      weight += 2 * own * residual * at(residualShares, j) * at(precision, i * count + j) ** 2;
  }
  const logRatio = Math.log(squares / expected) / 2;
  if (Number.isNaN(logRatio)) return { logRatio: 0, weight: 0 };
  return { logRatio: Math.min(MAX_LOG_RATIO, Math.max(-MAX_LOG_RATIO, logRatio)), weight };
}

/**
 * The readings put the drift at wᵀr ÷ wᵀPw, w what it moves, with the variance 1 ÷ wᵀPw less the drift's own; a habit lies about a
 * garment's drift by what is not the tester's own share of it.
 */
function shownDrift(
  { effects }: TesterBlock,
  { precision, right }: BlockInAll,
  { sd, variance }: { readonly sd: number; readonly variance: number },
): ShownDrift {
  const weights = effects.find((effect) => effect.sd === sd)?.weights;
  if (weights === undefined) return NOTHING;
  const count = right.length;
  let information = 0;
  let along = 0;
  for (let i = 0; i < count; i += 1) {
    along += at(weights, i) * at(right, i);
    for (let j = 0; j < count; j += 1) information += at(weights, i) * at(precision, i * count + j) * at(weights, j);
  }
  const left = Math.max(0, 1 / information - variance);
  const weight = 1 / (left + (1 - OWN_DRIFT_SHARE) * variance);
  return Number.isFinite(weight) ? { offset: along / information, weight } : NOTHING;
}
