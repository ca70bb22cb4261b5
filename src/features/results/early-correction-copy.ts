import type { PatternDocument } from "@/engine/pattern";
import type { EarlyCorrection } from "./early-corrections-data";

const MAX_NAMES = 4;

/** A count that the text seems to have wrong, and who can still be told in time. */
export function earlyWords(early: EarlyCorrection, pattern: PatternDocument): string {
  return `${countWords(early, pattern)} ${namesWords(early.names)} not reached it.`;
}

/** The same without anybody's name. */
export function earlyWordsByCount(early: EarlyCorrection, pattern: PatternDocument): string {
  const many = early.names.length;
  return `${countWords(early, pattern)} ${many === 1 ? "1 tester has" : `${many} testers have`} not reached it.`;
}

function countWords({ change }: EarlyCorrection, { counts, sizes }: PatternDocument): string {
  const count = counts.find(({ id }) => id === change.count);
  const size = sizes.find(({ id }) => id === change.size)?.label ?? change.size;
  const numbers = `${change.was} ${count?.direction ?? "stitches"} for “${count?.label ?? change.count}”, not ${change.becomes}`;
  return `In size ${size} the text seems to give ${numbers}.`;
}

function namesWords(names: readonly string[]): string {
  const more = names.length - MAX_NAMES;
  const shown = more > 0 ? [...names.slice(0, MAX_NAMES), more === 1 ? "1 more" : `${more} more`] : names;
  const list = shown.length < 2 ? shown.join("") : `${shown.slice(0, -1).join(", ")} and ${shown.at(-1) ?? ""}`;
  return `${list} ${names.length === 1 ? "has" : "have"}`;
}
