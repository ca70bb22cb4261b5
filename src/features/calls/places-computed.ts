import type { PatternDocument, Places } from "@/engine/pattern";

export interface PlaceRow {
  readonly size: string;
  readonly least: number;
  readonly wanted: number;
  readonly most: number;
}

export function placesBySize(rows: readonly PlaceRow[]): Places {
  return Object.fromEntries(rows.map(({ size, least, wanted, most }) => [size, { least, wanted, most }]));
}

/** Those for the sizes of a pattern, none where a size has none. */
export function placesOfSizes(places: Places, { sizes }: Pick<PatternDocument, "sizes">): Places {
  return Object.fromEntries(sizes.map(({ id }) => [id, places[id] ?? { least: 0, wanted: 0 }]));
}
