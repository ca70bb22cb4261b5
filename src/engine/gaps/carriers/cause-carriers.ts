import type { PatternDocument } from "../../pattern";
import { leastEvidence, type CauseSearch } from "../causes/search-causes";
import type { Carrier } from "../gaps-output";
import { blockInFit, leaveOut, openFit, type BlockInFit } from "./block-in-fit";
import type { TesterPlace } from "../model/tester-places";
import { carrierOf } from "./carrier";

/**
 * On whom each cause rests: those without whom its evidence would be less than is asked of it.
 *
 * @returns for each found cause the testers, none where no single one carries it.
 * @see docs/method.md#on-whom-it-rests.
 */
export function causeCarriers(
  pattern: PatternDocument,
  search: CauseSearch,
  places: readonly TesterPlace[],
): readonly (readonly Carrier[])[] {
  const all = openFit(search.fit);
  return search.found.map(({ evidence, without }, index) => {
    const others = openFit(without);
    return places.flatMap((place) => {
      const [withCause, withoutCause] = [all, others].map((opened) => blockInFit(opened, place.size, place.block));
      // What their readings, or one of them, add to the log likelihood with the cause more than without it.
      const addedBy = (row: number | null) => logDensityOf(withCause, row) - logDensityOf(withoutCause, row);
      return carrierOf(pattern, place, (row) => evidence - addedBy(row) > leastEvidence(index));
    });
  });
}

function logDensityOf(block: BlockInFit | null | undefined, row: number | null): number {
  return (block && leaveOut(block, row))?.logDensity ?? 0;
}
