import { pageOfList, type PageOfList } from "@/ui/page-number";
import type { PlacesQuery } from "./schema";
import type { StoredBoard, StoredSide, StoredSize } from "./stored-board";

/** With more people, one size is listed at a time. */
const MOST_LISTED = 40;
const A_PAGE_OF_A_SIZE = 20;
const A_PAGE_OF_WAITING = 12;
/** With more people to invite, only the number in each size is shown. */
const MAX_NAMED = 60;

/** People of the board that are shown, by position: from where, and how many. */
interface Stretch {
  readonly from: number;
  readonly many: number;
}

/** Which people of a board a page shows. */
export interface ShownPeople {
  readonly isFolded: boolean;
  /** By size: the page of people listed in it; null where it is collapsed. */
  readonly listed: ReadonlyMap<string, PageOfList & Stretch>;
  readonly waiting: PageOfList & Stretch;
  /** Everyone who would be invited is named. */
  readonly areNamed: boolean;
}

/** @param query which size is open, and which pages. */
export function shownPeople(board: StoredBoard, side: StoredSide, query: PlacesQuery): ShownPeople {
  const isFolded = board.waitingFrom > MOST_LISTED;
  const listed = board.sizes.filter(({ id }) => !isFolded || id === query.in);
  const waiting = pageOfList(query.waiting ?? 1, side.waiting, A_PAGE_OF_WAITING);
  return {
    isFolded,
    listed: new Map(listed.map((size) => [size.id, isFolded ? pageOfSize(size, query) : wholeSize(size)])),
    waiting: { ...waiting, ...stretchOf(waiting, { from: board.waitingFrom, many: side.waiting }) },
    areNamed: board.sizes.reduce((sum, { placed }) => sum + placed, 0) <= MAX_NAMED,
  };
}

function pageOfSize({ from, invited, placed }: StoredSize, query: PlacesQuery): PageOfList & Stretch {
  const page = pageOfList(query.placed ?? 1, invited + placed, A_PAGE_OF_A_SIZE);
  return { ...page, ...stretchOf(page, { from, many: invited + placed }) };
}

function wholeSize({ from, invited, placed }: StoredSize): PageOfList & Stretch {
  const many = invited + placed;
  return { page: 1, pages: 1, skip: 0, take: many, from, many };
}

function stretchOf({ skip, take }: PageOfList, { from, many }: Stretch): Stretch {
  return { from: from + skip, many: Math.max(0, Math.min(take, many - skip)) };
}

/** Positions of everyone with a row on the page. */
export function shownPositions(board: StoredBoard, side: StoredSide, shown: ShownPeople): readonly number[] {
  const named = board.sizes.map(({ from, invited, placed }) => ({ from: from + invited, many: placed }));
  const stretches =
    side.crowds === null
      ? [{ from: 0, many: board.waitingFrom + side.waiting }]
      : [...shown.listed.values(), shown.waiting, ...(shown.areNamed ? named : [])];
  const positions = stretches.flatMap(({ from, many }) => Array.from({ length: many }, (_, index) => from + index));
  return [...new Set(positions)];
}

/** Ids of applicants and testers who are named elsewhere on the page. */
export function listedPeople(
  { wouldMove, nearest, withoutBody, free }: StoredSide,
  { change }: PlacesQuery,
): { readonly applications: readonly string[]; readonly testers: readonly string[] } {
  const told = [
    ...(wouldMove?.first ?? []),
    ...nearest.flatMap(({ people }) => people),
    ...withoutBody.first,
    ...free.flatMap(({ successors }) => successors),
  ].map(({ application }) => application);
  return {
    applications: [...new Set(change === undefined ? told : [...told, change])],
    testers: free.flatMap(({ left }) => left.first),
  };
}
