import { ownValue, type Size } from "@/engine/pattern";
import type { CallListing } from "../loaders";

/** The size that the address names, else the middle one of those that still look for testers, else the middle one. */
export function chosenSize(
  { pattern: { sizes }, places }: Pick<CallListing, "pattern" | "places">,
  asked: string | readonly string[] | undefined,
): Size | undefined {
  const offered = sizes.filter(({ id }) => (ownValue(places, id)?.wanted ?? 0) > 0);
  return sizes.find(({ id }) => id === asked) ?? middleOf(offered) ?? middleOf(sizes);
}

function middleOf(sizes: readonly Size[]): Size | undefined {
  return sizes[Math.floor(sizes.length / 2)];
}
