import { addBlock } from "./add-block";
import { buffersFor } from "./block-precision";
import type { Information } from "./information";
import type { Group, Readings } from "./variance-model";

/**
 * Integrates out the blocks' own effects, one small block at a time (Woodbury), so that the cost is linear in their number.
 *
 * @param sds the standard deviations, by index.
 * @returns the information about the cells, with derivatives by the variances of the block-level standard deviations.
 * @see Lindstrom & Bates 1988 for folding blocks in; Golub & Van Loan 2.1.4 for Woodbury's identity.
 */
export function gatherInformation(readings: Readings, sds: Float64Array): Information {
  const used = blockLevelSds(readings);
  const totals = {
    constant: 0,
    readings: 0,
    traceSlopes: new Float64Array(sds.length),
    squareSlopes: new Float64Array(sds.length),
  };
  const buffers = buffersFor(readings.groups.flatMap(({ blocks }) => blocks));
  const groups = readings.groups.map((group) => {
    const information = emptyInformation(group, used, sds.length);
    for (const block of group.blocks)
      addBlock({ block, residualSd: readings.residualSd, sds, information, totals, buffers });
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

function emptyInformation({ cells }: Group, used: ReadonlySet<number>, sds: number) {
  const indices = Array.from({ length: sds }, (_, index) => index);
  return {
    cells,
    precision: new Float64Array(cells * cells),
    right: new Float64Array(cells),
    precisionSlopes: indices.map((index) => (used.has(index) ? new Float64Array(cells * cells) : undefined)),
    rightSlopes: indices.map((index) => (used.has(index) ? new Float64Array(cells) : undefined)),
  };
}
