import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findBlock, readInstructions } from "@/engine/instructions";
import { saltmarshInstructions } from "../../../prisma/demo/saltmarsh-instructions";

const TEXT = `A VEST

Cast on 98 (118) stitches
and join.

Body:
- Knit until it measures 38 cm.
- Part the work,
  and turn.
Row 1: knit all stitches.

# Neck
Bind off 30 (34) stitches at the centre.
`;

const said = (text: string) => readInstructions(text).map(({ kind, text: words }) => [kind, words]);

describe("readInstructions", () => {
  it("tells headings, paragraphs and items by what is customary in plain text", () => {
    expect(said(TEXT)).toEqual([
      ["heading", "A VEST"],
      ["paragraph", "Cast on 98 (118) stitches\nand join."],
      ["heading", "Body:"],
      ["item", "Knit until it measures 38 cm."],
      ["item", "Part the work,\n  and turn."],
      ["item", "Row 1: knit all stitches."],
      ["heading", "Neck"],
      ["paragraph", "Bind off 30 (34) stitches at the centre."],
    ]);
  });

  it("does not mistake a row in abbreviations or a sentence before a list for a heading", () => {
    expect(said("K2, P2 TO END OF ROW 12")).toEqual([["paragraph", "K2, P2 TO END OF ROW 12"]]);
    expect(said("Work on\nas follows:")).toEqual([["paragraph", "Work on\nas follows:"]]);
  });

  it("keeps every character", () => {
    let blocks = 0;
    const line = fc.oneof(
      fc.constantFrom(
        "",
        " ",
        "# A",
        "- b",
        "1. c",
        "NECK",
        "Body:",
        "Row 2: k",
        "text",
        "\r",
        "\u2028",
        "\ud800",
        "\u00a0é",
      ),
      fc.string({ maxLength: 12 }),
    );
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 15 }).map((lines) => lines.join("\n")),
        (text) => {
          const read = readInstructions(text);
          const again = read.map(({ lead, text: words, tail }) => lead + words + tail).join("");
          expect(again).toBe(text.trim() === "" ? "" : text);
          blocks += read.length;
        },
      ),
      { numRuns: 200 },
    );
    expect(blocks).toBeGreaterThan(200);
  });
});

describe("findPlace", () => {
  const placeOf = (words: string) => {
    const block = readInstructions(TEXT).find(({ text }) => text.startsWith(words));
    if (block === undefined) throw new Error(`no block ${words}`);
    return block.place;
  };

  it("finds every block of an unchanged text", () => {
    const blocks = readInstructions(saltmarshInstructions);
    expect(blocks.length).toBeGreaterThan(25);
    for (const block of blocks) expect(findBlock(saltmarshInstructions, block.place)).toEqual(block);
  });

  it("finds the same words after they moved", () => {
    const moved = `Materials:\n\nSome yarn.\n\n${TEXT}`;
    expect(findBlock(moved, placeOf("Bind off"))?.text).toBe("Bind off 30 (34) stitches at the centre.");
  });

  it("finds a block whose numbers changed", () => {
    const revised = TEXT.replace("30 (34)", "32 (36)");
    expect(findBlock(revised, placeOf("Bind off"))?.text).toBe("Bind off 32 (36) stitches at the centre.");
  });

  it("finds the nearest of the same words", () => {
    const twice = "Knit 2 rows.\n\nPurl all.\n\nKnit 2 rows.\n";
    const last = readInstructions(twice).at(-1);
    if (last === undefined) throw new Error("no block");
    expect(findBlock(twice, last.place)?.place.block).toBe(2);
  });

  it("finds nothing where the block is gone", () => {
    expect(findBlock("Something quite different.", placeOf("Bind off"))).toBeNull();
    expect(findBlock("", placeOf("Bind off"))).toBeNull();
  });
});
