import { mirrorLower } from "../linear-algebra";
import { addBlock } from "./add-block";
import { buffersFor } from "./block-precision";
import type { Information } from "./information";
import type { Group, Readings } from "./variance-model";

/**
 * Integrates out the blocks' own effects, one small block at a time (Woodbury), so that the cost is linear in their number.
 *
 * @param sds the standard deviations, by index.
 * @param withSlopes whether to derive it by the variances of the block-level standard deviations; slopes are left out or 0 otherwise.
 * @returns the information about the cells.
 * @see Lindstrom & Bates 1988 for folding blocks in; Golub & Van Loan 2.1.4 for Woodbury's identity.
 */
export function gatherInformation(
  readings: Readings,
  sds: Float64Array,
  { withSlopes } = { withSlopes: true },
): Information {
  const used = withSlopes ? blockLevelSds(readings) : new Set<number>();
  const totals = {
    constant: 0,
    readings: 0,
    traceSlopes: new Float64Array(sds.length),
    squareSlopes: new Float64Array(sds.length),
  };
  const buffers = buffersFor(readings.groups.flatMap(({ blocks }) => blocks));
  const groups = readings.groups.map((group) => {
    const information = emptyInformation(group, used, sds.length);
    let firstEffect = 0;
    for (const block of group.blocks) {
      addBlock({
        ...{ block, residualSd: readings.residualSd, sds, information, totals, buffers, withSlopes },
        firstEffect,
      });
      firstEffect += block.effects.length;
    }
    for (const half of [information.precision, ...information.precisionSlopes])
      if (half !== undefined) mirrorLower(half, group.cells);
    return information;
  });
  return { groups, ...totals };
}

function blockLevelSds({ groups, residualSd }: Readings): ReadonlySet<number> {
  const used = new Set<number>();
  if (residualSd !== null) used.add(residualSd);
  for (const { blocks } of groups) {
    for (const { effects } of blocks) for (const { sd } of effects) if (sd !== null) used.add(sd);
  }
  return used;
}

/** Blocks with fewer effects than this share of the cells are kept as a matrix of low rank. */
const FEW_EFFECTS = 0.5;

function emptyInformation({ cells, blocks }: Group, used: ReadonlySet<number>, sds: number) {
  const rank = blocks.reduce((sum, { effects }) => sum + effects.length, 0);
  const isLow = rank > 0 && rank < FEW_EFFECTS * cells;
  const indices = Array.from({ length: sds }, (_, index) => index);
  return {
    cells,
    precision: new Float64Array(cells * cells),
    lowRank: isLow ? { own: new Float64Array(cells), shared: new Float64Array(rank * cells) } : null,
    right: new Float64Array(cells),
    precisionSlopes: indices.map((index) => (used.has(index) ? new Float64Array(cells * cells) : undefined)),
    rightSlopes: indices.map((index) => (used.has(index) ? new Float64Array(cells) : undefined)),
  };
}
