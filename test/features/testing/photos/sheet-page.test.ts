import { expect, it } from "vitest";
import type { PhotoView } from "@/features/testing/photos/photo-views";
import type { SheetPhoto } from "@/features/testing/photos/photo-sheet-data";
import { sheetHref, sheetPage } from "@/features/testing/photos/sheet-page";
import { patternDocument } from "../../../factories/pattern";

function photo(photoId: string, size: string, view: PhotoView): SheetPhoto {
  return { photoId, size, view, testerId: "t", name: "Kit", creditName: null, note: "", allowed: [], isShown: null };
}

const { sizes } = patternDocument();
const PHOTOS = [photo("a", "large", "back"), photo("b", "small", "front"), photo("c", "large", "front")];
const idsOf = (page: ReturnType<typeof sheetPage>) =>
  page.groups.map(({ id, photos }) => [id, ...photos.map(({ photoId }) => photoId)]);

it("groups photos by size in the pattern's order, and each size by what they show", () => {
  expect(idsOf(sheetPage(PHOTOS, sizes, { page: 1 }))).toEqual([
    ["small", "b"],
    ["large", "c", "a"],
  ]);
  expect(idsOf(sheetPage(PHOTOS, sizes, { page: 1, view: "front" }))).toEqual([
    ["small", "b"],
    ["large", "c"],
  ]);
  expect(sheetPage(PHOTOS, sizes, { page: 1, size: "small", view: "swatch" }).matching).toBe(0);
});

it("shows 150 photos on five pages of at most 36, each photo once", () => {
  const many = Array.from({ length: 150 }, (_, index) =>
    photo(`p${index}`, index % 4 === 0 ? "small" : "large", "front"),
  );
  const pages = [1, 2, 3, 4, 5].map((page) => sheetPage(many, sizes, { page }));
  const seen = pages.map(({ groups }) => groups.flatMap(({ photos }) => photos.map(({ photoId }) => photoId)));
  expect(seen.map((ids) => ids.length)).toEqual([36, 36, 36, 36, 6]);
  expect(new Set(seen.flat()).size).toBe(150);
});

it("names in its address only what is asked for", () => {
  expect(sheetHref("c", {})).toBe("/calls/c/photos");
  expect(sheetHref("c", { size: "small", view: "back", page: 3 })).toBe("/calls/c/photos?size=small&view=back&page=3");
});
