import type { Fabric, PatternDocument } from "@/engine/pattern";

type Craft = PatternDocument["craft"];

/** `a 4 mm hook`, `3.75 mm needles`. */
export function toolWords(craft: Craft, toolMm: number): string {
  const mm = `${Number(toolMm.toFixed(2))} mm`;
  return craft === "crochet" ? `a ${mm} hook` : `${mm} needles`;
}

/** `hook size`, `needle size`. */
export function toolSizeWord(craft: Craft): string {
  return craft === "crochet" ? "hook size" : "needle size";
}

/** Rows, or rounds where the fabric is worked in the round. */
export function rowsWord({ worked }: Fabric): "rows" | "rounds" {
  return worked === undefined || worked === "flat" ? "rows" : "rounds";
}
