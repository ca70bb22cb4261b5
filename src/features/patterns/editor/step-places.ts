import type { DraftPlace } from "./draft-garment";

const PLACES = [
  { value: "both", label: "each end" },
  { value: "left", label: "left edge" },
  { value: "right", label: "right edge" },
  { value: "centre", label: "centre" },
  { value: "even", label: "evenly spread" },
] as const;

/** Places in the row, the part's markers among them. */
export function placeChoices(markers: readonly string[]) {
  return [...PLACES, ...markers.map((marker) => ({ value: `marker ${marker}`, label: `marker “${marker}”` }))];
}

export function placeChoice(at: DraftPlace): string {
  return typeof at === "object" ? `marker ${at.marker}` : at;
}

export function placeOfChoice(choice: string): DraftPlace {
  const [kind, marker = ""] = choice.split(" ");
  return kind === "marker" ? { marker } : (PLACES.find(({ value }) => value === choice)?.value ?? "both");
}
