import { outlineGarment } from "@/engine/garment";
import type { PatternDocument } from "@/engine/pattern";

/** Pieces of a garment in one size by id, and what is wrong with it. */
export function outlined(pattern: PatternDocument, size = "small") {
  const { pieces, faults } = outlineGarment(pattern, size);
  return {
    faults,
    messages: faults.map(({ step, seam, message }) => `${step ?? `seam ${seam}`}: ${message}`),
    piece: (id: string) => {
      const found = pieces.find(({ piece }) => piece === id);
      if (found === undefined) throw new Error(`no piece ${id}`);
      return found;
    },
  };
}

type Outline = readonly (readonly [number, number])[];

/** Points to a thousandth of a millimetre. */
export function rounded(outline: Outline): [number, number][] {
  return outline.map(([x, y]) => [round(x), round(y)]);
}

function round(cm: number): number {
  return Math.round(cm * 10_000) / 10_000 + 0;
}

/** Area within a closed line, by the shoelace formula, cm². */
export function areaWithin(outline: Outline): number {
  return outline.slice(1).reduce((sum, [x, y], index) => {
    const [beforeX, beforeY] = outline[index] ?? [x, y];
    return sum + (beforeX * y - x * beforeY) / 2;
  }, 0);
}

/** Live stitches of each row, runs of rows with the same as `stitches × rows`. */
export function stitchRuns(steps: readonly { readonly onNeedle: readonly number[] }[]): string[] {
  const runs: { text: string; rows: number }[] = [];
  for (const { onNeedle } of steps) {
    const text = onNeedle.join(" + ");
    const last = runs.at(-1);
    if (last?.text === text) last.rows += 1;
    else runs.push({ text, rows: 1 });
  }
  return runs.map(({ text, rows }) => `${text} × ${rows}`);
}
