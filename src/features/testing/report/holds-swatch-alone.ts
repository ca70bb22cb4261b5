import { parseField, type TypedReport } from "@/engine/reporting";

/** Nothing about the garment is typed: no more than a swatch, perhaps not even that. */
export function holdsSwatchAlone(typed: TypedReport): boolean {
  return Object.entries(typed).every(([field, text]) => text.trim() === "" || parseField(field)?.kind === "swatch");
}
