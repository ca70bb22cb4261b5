import { at } from "../../linear-algebra";
import {
  blockInAll,
  buffersFor,
  surfacePosterior,
  withoutBlock,
  withoutReading,
  type BlockInAll,
  type CellsWithout,
  type GroupPosterior,
} from "../../variance-components";
import type { BlockMistakes } from "../mistakes/mistakes";
import type { GapFit } from "../model/fit-gap-surface";
import { SD_INDEX } from "../model/gap-sds";

/** A fit, with what its cells and readings look like without any one tester or reading. */
export interface OpenedFit {
  readonly fit: GapFit;
  readonly groups: readonly GroupPosterior[];
  readonly buffers: ReturnType<typeof buffersFor>;
}

/** @param groups posterior of its cells, if the caller has it already. */
export function openFit(fit: GapFit, groups = surfacePosterior(fit.solution).groups): OpenedFit {
  const blocks = fit.readings.groups.flatMap((group) => group.blocks);
  return { fit, groups, buffers: buffersFor(blocks) };
}

/** One tester's block in a fit. */
export interface BlockInFit {
  readonly posterior: GroupPosterior;
  readonly mistakes: BlockMistakes;
  readonly inAll: BlockInAll;
}

/** @returns the b-th tester of size s in the fit; null where there is none. */
export function blockInFit({ fit, groups, buffers }: OpenedFit, s: number, b: number): BlockInFit | null {
  const block = fit.readings.groups[s]?.blocks[b];
  const posterior = groups[s];
  const mistakes = fit.mistakes[s]?.[b];
  if (block === undefined || posterior === undefined || mistakes === undefined) return null;
  const inAll = blockInAll({ block, residualSd: SD_INDEX.residual, sds: fit.sds, buffers, posterior });
  return { posterior, mistakes, inAll };
}

/** The size's cells without the tester, or without one reading; with the log density of what was left out, mistakes allowed for. */
export function leaveOut({ posterior, mistakes, inAll }: BlockInFit, row: number | null): CellsWithout | null {
  if (row !== null) return { ...withoutReading(inAll, posterior, row), logDensity: at(mistakes.logDensities, row) };
  const without = withoutBlock(inAll, posterior);
  return without && { ...without, logDensity: without.logDensity + mistakes.logCorrection };
}
