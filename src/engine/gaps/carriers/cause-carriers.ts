import type { PatternDocument } from "../../pattern";
import { leastEvidence, type CauseSearch } from "../causes/search-causes";
import type { Carrier } from "../gaps-output";
import { blockInFit, leaveOut, openFit, type OpenedFit } from "./block-in-fit";
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
      const stands = (row: number | null) => evidence - evidenceOf({ all, others }, place, row) > leastEvidence(index);
      return carrierOf(pattern, place, stands);
    });
  });
}

/** What a tester's readings, or one of them, add to the log likelihood with the cause more than without it. */
function evidenceOf(
  { all, others }: { all: OpenedFit; others: OpenedFit },
  { size, block }: TesterPlace,
  row: number | null,
): number {
  const [withCause, withoutCause] = [all, others].map((opened) => {
    const found = blockInFit(opened, size, block);
    return found && leaveOut(found, row);
  });
  return (withCause?.logDensity ?? 0) - (withoutCause?.logDensity ?? 0);
}
