import { ownValue, type PatternDocument, type Places } from "@/engine/pattern";
import { fitInSize, type BodyDifference } from "@/engine/places";
import type { CallApplication } from "./data";
import type { ListQuery } from "./list-query";

/** How an applicant's body fits a size that has places. */
export interface SizeFit {
  readonly size: string;
  readonly label: string;
  readonly differences: readonly BodyDifference[];
  readonly bodyMisfit: number;
  readonly isWithinReach: boolean;
  /** She would make it. */
  readonly isAccepted: boolean;
}

export interface ListedApplication extends CallApplication {
  /** In the pattern's order; empty where she has withdrawn or a measurement that decides the size is not there. */
  readonly fits: readonly SizeFit[];
  /** The size that her body is nearest to; null where there are no fits. */
  readonly nearest: SizeFit | null;
}

interface BoardOf {
  readonly pattern: PatternDocument;
  readonly places: Places;
  /** Body measurements that decide the size. */
  readonly fitBy: readonly string[];
}

/** Applications with what their bodies are to the sizes, the newest first. */
export function applicationBoard(applications: readonly CallApplication[], board: BoardOf): ListedApplication[] {
  return applications.map((application) => withFits(application, board)).toReversed();
}

function withFits(application: CallApplication, { pattern, places, fitBy }: BoardOf): ListedApplication {
  const { measurements, document } = application;
  const canFit =
    measurements !== null && fitBy.length > 0 && fitBy.every((id) => ownValue(measurements, id) !== undefined);
  if (!canFit) return { ...application, fits: [], nearest: null };
  const applicant = { id: "a", body: measurements, accepts: document.accepts ?? undefined };
  const fits = pattern.sizes.flatMap(({ id: size, label }): SizeFit[] => {
    if ((ownValue(places, size)?.wanted ?? 0) === 0) return [];
    return [{ size, label, ...fitInSize({ document: { pattern, fitBy: [...fitBy] }, applicant, size }) }];
  });
  const [nearest = null] = fits.toSorted((left, right) => left.bodyMisfit - right.bodyMisfit);
  return { ...application, fits, nearest };
}

/** Those that a list is asked for; who has withdrawn is asked for by that alone. */
export function chosenApplications(
  board: readonly ListedApplication[],
  { word, size }: ListQuery,
): ListedApplication[] {
  return board.filter(
    (application) =>
      (word === "all" ? application.withdrawnAt === null : wordOf(application) === word) &&
      (size === undefined || application.fits.some((fit) => fit.size === size && fit.isWithinReach)),
  );
}

/** What a list counts an application under. */
export function wordOf({ word, withdrawnAt }: CallApplication): Exclude<ListQuery["word"], "all"> {
  return withdrawnAt === null ? (word ?? "undecided") : "withdrawn";
}

export interface BoardCounts {
  readonly byWord: Readonly<Record<ListQuery["word"], number>>;
  /** By size within reach. */
  readonly bySize: readonly { readonly size: string; readonly label: string; readonly count: number }[];
  /** Nearest to one of the largest sizes, from the first named upward; null where there are few sizes. */
  readonly largest: { readonly from: string; readonly count: number } | null;
}

/** Sizes that testers are wanted in. */
export function wantedSizes({ sizes }: PatternDocument, places: Places): PatternDocument["sizes"] {
  return sizes.filter(({ id }) => (ownValue(places, id)?.wanted ?? 0) > 0);
}

/** How many there are of each kind; who has withdrawn counts as that alone. */
export function boardCounts(board: readonly ListedApplication[], { pattern, places }: BoardOf): BoardCounts {
  const byWord = { all: 0, undecided: 0, yes: 0, maybe: 0, no: 0, withdrawn: 0 };
  for (const application of board) {
    byWord[wordOf(application)] += 1;
    if (application.withdrawnAt === null) byWord.all += 1;
  }
  const sizes = wantedSizes(pattern, places);
  const bySize = sizes.map(({ id, label }) => ({
    size: id,
    label,
    count: board.filter(({ fits }) => fits.some(({ size, isWithinReach }) => size === id && isWithinReach)).length,
  }));
  const largest = sizes.slice(Math.ceil((2 * sizes.length) / 3));
  const ids = new Set(largest.map(({ id }) => id));
  const count = board.filter(({ nearest }) => nearest !== null && ids.has(nearest.size)).length;
  return { byWord, bySize, largest: largest[0] && sizes.length > 2 ? { from: largest[0].label, count } : null };
}

const LONGEST_HEADING = 60;

/** A name as a heading can hold it; the whole of it stands among what she said. */
export function shortName(name: string): string {
  if (name.length <= LONGEST_HEADING) return name;
  const letters = Array.from(new Intl.Segmenter("en").segment(name), ({ segment }) => segment);
  return letters.length > LONGEST_HEADING ? `${letters.slice(0, LONGEST_HEADING).join("")}…` : name;
}
