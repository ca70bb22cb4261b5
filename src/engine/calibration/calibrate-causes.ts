import { gaps, type CauseInput } from "../gaps";
import type { PatternDocument } from "../pattern";
import { plantedCall, type Design, type Fault } from "./planted-call";
import { plantedSearch } from "./planted-search";

/** Numbers of tellable calls by who named the planted cause first: the model, and a search that is told the true variances. */
export interface CausesNamed {
  readonly tellable: number;
  readonly named: number;
  readonly namedByTold: number;
  /** Where only the one or only the other did. */
  readonly onlyModel: number;
  readonly onlyTold: number;
  /** Simulated until there were as many tellable ones. */
  readonly simulated: number;
}

/** So that a kind which can hardly be told ends; one that never can ends after as many calls as tellable ones are asked for. */
const MAX_SIMULATED_PER_TELLABLE = 10;

/**
 * How often the planted cause of a kind is named first, or tied with the first, among calls in which it can be told from others.
 *
 * @param patterns garments that have causes of the kind; they alternate.
 * @param tellable number of such calls. @param seed of the first call; each call has its own.
 * @see docs/method.md#calibration.
 */
export function calibrateCauses(given: {
  readonly patterns: readonly PatternDocument[];
  readonly design: Design;
  readonly fault: Extract<Fault, "cause" | "cause and small errors">;
  readonly causeKind: CauseInput["kind"];
  readonly tellable: number;
  readonly seed: number;
}): CausesNamed {
  const { patterns, design, fault, causeKind, seed } = given;
  const counts = { tellable: 0, named: 0, namedByTold: 0, onlyModel: 0, onlyTold: 0, simulated: 0 };
  const mostSimulated = () => given.tellable * (counts.tellable === 0 ? 1 : MAX_SIMULATED_PER_TELLABLE);
  while (counts.tellable < given.tellable && counts.simulated < mostSimulated()) {
    const pattern = patterns[counts.simulated % patterns.length];
    if (pattern === undefined) throw new RangeError("no garment has causes of this kind");
    const drawn = { pattern, design, fault, causeKind, entryErrorShare: 0, seed: seed + 2 * counts.simulated };
    counts.simulated += 1;
    const planted = plantedCall(drawn);
    const search = planted.cause && plantedSearch(planted, planted.cause);
    if (search === null || !search.isTellable()) continue;
    const model = search.isFirst(gaps(planted.call).causes[0]);
    const told = search.isFirst(search.firstOfTold());
    counts.tellable += 1;
    if (model) counts.named += 1;
    if (told) counts.namedByTold += 1;
    if (model && !told) counts.onlyModel += 1;
    if (told && !model) counts.onlyTold += 1;
  }
  return counts;
}
