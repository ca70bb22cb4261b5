import type { PatternDocument } from "../pattern";

/** A number to the tenth, without a needless one: `19.7`, `20`. */
export function toTenth(value: number): string {
  return String(Number(value.toFixed(1)));
}

/** `a 3.75 mm hook`, `3.75 mm needles`. */
export function toolText(craft: PatternDocument["craft"], toolMm: number): string {
  const mm = `${Number(toolMm.toFixed(2))} mm`;
  return craft === "crochet" ? `a ${mm} hook` : `${mm} needles`;
}
