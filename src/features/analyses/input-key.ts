import type { CauseInput } from "@/engine/gaps";

/** One input as a form names it: `count.body..size-2x`. Ids hold no dot. */
export function inputKey({ kind, id, direction, size }: CauseInput): string {
  return [kind, id, direction ?? "", size ?? ""].join(".");
}

/** The same read again: what is not said is left out; whether there is such an input is for others to prove. */
export function readInputKey(key: string): Record<string, string> {
  const [kind = "", id = "", direction = "", size = ""] = key.split(".");
  return { kind, id, ...(direction === "" ? {} : { direction }), ...(size === "" ? {} : { size }) };
}
