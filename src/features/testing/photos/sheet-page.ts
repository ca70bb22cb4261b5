import type { PatternDocument } from "@/engine/pattern";
import { callPageHref } from "@/features/calls/call-pages";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import type { PhotoSheetQuery } from "./photo-schema";
import { PHOTO_VIEWS } from "./photo-views";
import type { SheetPhoto } from "./photo-sheet-data";

const PHOTOS_A_PAGE = 36;

type Sizes = PatternDocument["sizes"];

export interface SheetPage {
  /** The sizes of which there are photos, in the pattern's order. */
  readonly sizes: Sizes;
  /** The photos of this page, by size, each size by what they show. */
  readonly groups: readonly { readonly id: string; readonly label: string; readonly photos: readonly SheetPhoto[] }[];
  /** How many photos match, on all pages. */
  readonly matching: number;
  readonly list: PageOfList;
}

/** One page of a contact sheet. */
export function sheetPage(
  photos: readonly SheetPhoto[],
  sizes: Sizes,
  { size, view, page }: PhotoSheetQuery,
): SheetPage {
  const withPhotos = sizes.filter(({ id }) => photos.some((photo) => photo.size === id));
  const views = PHOTO_VIEWS.filter((each) => view === undefined || each === view);
  const found = withPhotos
    .filter(({ id }) => size === undefined || id === size)
    .flatMap(({ id }) => views.flatMap((each) => photos.filter((photo) => photo.size === id && photo.view === each)));
  const list = pageOfList(page, found.length, PHOTOS_A_PAGE);
  const shown = found.slice(list.skip, list.skip + list.take);
  const groups = withPhotos
    .map(({ id, label }) => ({ id, label, photos: shown.filter((photo) => photo.size === id) }))
    .filter((group) => group.photos.length > 0);
  return { sizes: withPhotos, groups, matching: found.length, list };
}

/** The contact sheet of a call, of one size or one view where they are named. */
export function sheetHref(callId: string, { size, view, page = 1 }: Partial<PhotoSheetQuery>): string {
  const query = new URLSearchParams({
    ...(size === undefined ? {} : { size }),
    ...(view === undefined ? {} : { view }),
    ...(page === 1 ? {} : { page: String(page) }),
  }).toString();
  return `${callPageHref(callId, "photos")}${query === "" ? "" : `?${query}`}`;
}
