import type { Typed } from "@/engine/editing";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";

export type TypedKind = "number" | "length";

/** The content of a field: the text as typed, or the revision's number as one would type it. */
export function typedText(typed: Typed | undefined, kind: TypedKind, unit: LengthUnit): string {
  if (typed === undefined) return "";
  if (typeof typed === "string") return typed;
  return kind === "length" ? formatExactLength(typed, unit) : String(typed).replace("-", "−");
}
