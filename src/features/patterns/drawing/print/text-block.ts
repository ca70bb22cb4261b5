import { element } from "./svg-element";
import { escapeXml } from "@/server/escape-xml";

/** Width of an average letter as a share of the type's size; wide, because the printer's font is unknown. */
const LETTER_WIDTH = { plain: 0.56, bold: 0.64 };
const LINE_HEIGHT = 1.35;

export interface TextStyle {
  readonly sizeMm: number;
  readonly isBold?: boolean;
}

/** A block placed on a sheet. */
export interface Block {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly at: (xMm: number, yMm: number) => string;
}

/** A paragraph, wrapped to a width. */
export function textBlock(words: string, widthMm: number, { sizeMm, isBold }: TextStyle): Block {
  const lines = wrapped(words, Math.max(8, Math.floor(widthMm / (sizeMm * LETTER_WIDTH[isBold ? "bold" : "plain"]))));
  const lineMm = sizeMm * LINE_HEIGHT;
  return {
    widthMm,
    heightMm: lines.length * lineMm,
    at: (x, y) =>
      lines
        .map((line, index) =>
          element(
            "text",
            { x, y: y + sizeMm + index * lineMm, "font-size": sizeMm, "font-weight": isBold ? "bold" : undefined },
            escapeXml(line),
          ),
        )
        .join("\n"),
  };
}

/** Blocks below each other. */
export function stacked(blocks: readonly Block[], gapMm: number): Block {
  return {
    widthMm: Math.max(0, ...blocks.map(({ widthMm }) => widthMm)),
    heightMm: blocks.reduce((sum, { heightMm }) => sum + heightMm, 0) + gapMm * Math.max(0, blocks.length - 1),
    at: (x, y) => {
      let top = y;
      return blocks
        .map((block) => {
          const markup = block.at(x, top);
          top += block.heightMm + gapMm;
          return markup;
        })
        .join("\n");
    },
  };
}

/** Blocks side by side in shelves, as many on each as fit. */
export function shelved(blocks: readonly Block[], widthMm: number, gapMm: number): Block {
  const shelves: Block[][] = [];
  let leftMm = 0;
  for (const block of blocks) {
    const shelf = shelves.at(-1);
    if (shelf === undefined || block.widthMm > leftMm) {
      shelves.push([block]);
      leftMm = widthMm;
    } else shelf.push(block);
    leftMm -= block.widthMm + gapMm;
  }
  return stacked(
    shelves.map((shelf) => sideBySide(shelf, gapMm)),
    gapMm,
  );
}

function sideBySide(blocks: readonly Block[], gapMm: number): Block {
  return {
    widthMm: blocks.reduce((sum, { widthMm }) => sum + widthMm + gapMm, -gapMm),
    heightMm: Math.max(...blocks.map(({ heightMm }) => heightMm)),
    at: (x, y) => {
      let left = x;
      return blocks
        .map((block) => {
          const markup = block.at(left, y);
          left += block.widthMm + gapMm;
          return markup;
        })
        .join("\n");
    },
  };
}

function wrapped(words: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(/\s+/).flatMap((whole) => cut(whole, most))) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= most) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** A word in pieces that fit on a line. */
function cut(word: string, most: number): string[] {
  const letters = Array.from(word);
  const pieces = Array.from({ length: Math.ceil(letters.length / most) }, (_, index) =>
    letters.slice(index * most, (index + 1) * most).join(""),
  );
  return pieces;
}
