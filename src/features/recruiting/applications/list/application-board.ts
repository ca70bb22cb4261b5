import { ownValue, type PatternDocument, type Places } from "@/engine/pattern";
import { fitInSize, type BodyDifference } from "@/engine/places";
import type { CallApplication } from "../data";
import type { ListQuery } from "./list-query";

/** How an applicant's body fits a size that has spots. */
export interface SizeFit {
  readonly size: string;
  readonly label: string;
  readonly differences: readonly BodyDifference[];
  readonly bodyMisfit: number;
  readonly isWithinReach: boolean;
  /** The applicant would make this size. */
  readonly isAccepted: boolean;
}

export interface ListedApplication extends CallApplication {
  /** In the pattern's order; empty if withdrawn, or if a measurement that decides the size is missing. */
  readonly fits: readonly SizeFit[];
  /** The size nearest to the body measurements; null if there are no fits. */
  readonly nearest: SizeFit | null;
}

interface BoardOf {
  readonly pattern: PatternDocument;
  readonly places: Places;
  /** Body measurements that decide the size. */
  readonly fitBy: readonly string[];
}

/** Applications with how their bodies fit the sizes, the newest first. */
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

/** The applications that a query selects; withdrawn ones only by that filter. */
export function chosenApplications(
  board: readonly ListedApplication[],
  { decision, size }: ListQuery,
): ListedApplication[] {
  return board.filter(
    (application) =>
      (decision === "all" ? application.withdrawnAt === null : decisionOf(application) === decision) &&
      (size === undefined || application.fits.some((fit) => fit.size === size && fit.isWithinReach)),
  );
}

/** The filter that an application counts under. */
function decisionOf({ decision, withdrawnAt }: CallApplication): Exclude<ListQuery["decision"], "all"> {
  return withdrawnAt === null ? (decision ?? "undecided") : "withdrawn";
}

export interface BoardCounts {
  readonly byDecision: Readonly<Record<ListQuery["decision"], number>>;
  /** By size within reach. */
  readonly bySize: readonly { readonly size: string; readonly label: string; readonly count: number }[];
  /** Applicants nearest to one of the largest sizes, from `from` upward; null if there are few sizes. */
  readonly largest: { readonly from: string; readonly count: number } | null;
}

/** The sizes that have spots. */
export function wantedSizes({ sizes }: PatternDocument, places: Places): PatternDocument["sizes"] {
  return sizes.filter(({ id }) => (ownValue(places, id)?.wanted ?? 0) > 0);
}

/** The number of applications of each kind; withdrawn ones count only as withdrawn. */
export function boardCounts(board: readonly ListedApplication[], { pattern, places }: BoardOf): BoardCounts {
  const byDecision = { all: 0, undecided: 0, yes: 0, maybe: 0, no: 0, withdrawn: 0 };
  for (const application of board) {
    byDecision[decisionOf(application)] += 1;
    if (application.withdrawnAt === null) byDecision.all += 1;
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
  return { byDecision, bySize, largest: largest[0] && sizes.length > 2 ? { from: largest[0].label, count } : null };
}

const LONGEST_HEADING = 60;

/** A name shortened for a heading; the whole name is among the answers. */
export function shortName(name: string): string {
  if (name.length <= LONGEST_HEADING) return name;
  const letters = Array.from(new Intl.Segmenter("en").segment(name), ({ segment }) => segment);
  return letters.length > LONGEST_HEADING ? `${letters.slice(0, LONGEST_HEADING).join("")}…` : name;
}
