import type { CauseInput } from "@/engine/gaps";

/** The value that leaves a proposal as it is. */
export const LEAVE = "leave";

export const CHOSEN = "take.";

/** Name of the field in which the proposal with this index is accepted or left. */
export function chosenField(index: number): string {
  return `${CHOSEN}${index}`;
}

/** One input as a form names it: `count.body..size-2x`. Ids contain no dot. */
export function inputKey({ kind, id, direction, size }: CauseInput): string {
  return [kind, id, direction ?? "", size ?? ""].join(".");
}

/** Reads it back: absent parts are left out; callers check that such an input exists. */
export function readInputKey(key: string): Record<string, string> {
  const [kind = "", id = "", direction = "", size = ""] = key.split(".");
  return { kind, id, ...(direction === "" ? {} : { direction }), ...(size === "" ? {} : { size }) };
}
