import type { LengthUnit } from "@/engine/units";
import { dayWords } from "@/ui/moment-copy";
import type { CallListing } from "../loaders";

/** `in 9 sizes, XS to 5X`, `in the size M`. */
export function sizesWords({ sizes }: CallListing["pattern"]): string {
  const [first, last] = [sizes[0]?.label ?? "", sizes.at(-1)?.label ?? ""];
  return sizes.length === 1 ? `in the size ${first}` : `in ${sizes.length} sizes, ${first} to ${last}`;
}

/** The last day to apply, `Sunday 14 March 2027`; null if it is not set. */
export function lastDayWords({ dates, document }: Pick<CallListing, "dates" | "document">): string | null {
  if (dates.applyUntil === undefined) return null;
  return dayWords(new Date(dates.applyUntil.at.getTime() - 1), document.timeZone);
}

/** A tester call in one sentence, for previews of its link. */
export function openCallSentence(listing: CallListing): string {
  const { designer, pattern } = listing;
  const lastDay = lastDayWords(listing);
  const until = lastDay === null ? "" : ` Apply until ${lastDay}.`;
  return `${designer} is looking for testers for ${pattern.name}, a ${pattern.craft} pattern ${sizesWords(pattern)}.${until}`;
}

/** The public page with a size chosen; the anchor keeps it in sight where the browser loads the page anew. */
export function openCallHref(
  callId: string,
  { size, unit }: { readonly size: string; readonly unit: LengthUnit },
): string {
  return `/open-calls/${callId}?${new URLSearchParams({ size, unit }).toString()}#sizes`;
}

/** `2 spots`. */
export function spotWords(spots: number): string {
  if (spots === 0) return "no testers wanted";
  return spots === 1 ? "1 spot" : `${spots} spots`;
}
