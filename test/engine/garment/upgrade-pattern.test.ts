import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { outlineGarment, parseOutlineInput, usedStitches } from "@/engine/garment";
import {
  parsePattern,
  parseStoredPattern,
  patternDocument1Schema,
  upgradePattern,
  type PatternDocument1,
} from "@/engine/pattern";
import { predictStitches } from "@/engine/prediction";
import { patternDocument, patternDocument1 } from "../../factories/pattern";
import { piecedPattern1 } from "../../factories/pieced-pattern";
import { areaWithin, outlined } from "./outlined";

/** Every pattern that the kept database of an earlier version holds, as it was stored. */
function keptPatterns(): PatternDocument1[] {
  const lines = gunzipSync(readFileSync("test/database/dumps/main-0008.sql.gz")).toString().split("\n");
  return lines.flatMap((line) => {
    const [, escaped, text] = /^INSERT INTO "revision" .*?, (E?)'(\{.*\})', '/.exec(line) ?? [];
    if (text === undefined) return [];
    const json = text.replaceAll("''", "'");
    return [patternDocument1Schema.parse(JSON.parse(escaped === "E" ? json.replaceAll("\\\\", "\\") : json))];
  });
}

const kept = keptPatterns();
const patterns = [piecedPattern1(), wideSections(), ...kept].map(
  (pattern, index) => [`${pattern.name}, ${index + 1}`, pattern] as const,
);

/** Sections that change by odd numbers over odd numbers of rows, in two yarns, the second piece in rounds. */
function wideSections(): PatternDocument1 {
  const base = patternDocument1();
  const piece = { label: "Piece", fabric: "main", yarn: "wool" };
  return patternDocument1({
    fabrics: [
      ...base.fabrics,
      { id: "rib", label: "Rib", toolMm: 3, gauge: { stitches: 22, rows: 31 }, worked: "round" },
    ],
    counts: [...base.counts, { id: "top", label: "Top", fabric: "main", direction: "stitches" }],
    pieces: [
      {
        ...{ ...piece, id: "one", made: 3, mirrored: true, start: "neck" },
        sections: [
          { from: "width", to: "top", rows: "height" },
          { from: "top", to: "width", rows: "height", yarn: "silk" },
        ],
      },
      { ...{ ...piece, id: "two", made: 1, fabric: "rib" }, sections: [{ from: "top", to: "top", rows: "height" }] },
      { ...piece, id: "none", made: 2, sections: [] },
    ],
    yarns: ["wool", "silk"].map((id) => ({ id, label: id, metresPerBall: 100, gramsPerBall: 50 })),
    grading: { width: { small: 98, large: 118 }, height: { small: 101, large: 113 }, top: { small: 57, large: 66 } },
  });
}

/** Source: what format 1 said, made × Σ rows × (from + to) ÷ 2 of each section. */
function stitchesOfSections({ pieces, grading = {} }: PatternDocument1, size: string) {
  const number = (count: string) => grading[count]?.[size] ?? Number.NaN;
  return pieces.flatMap(({ id, made, fabric, yarn, sections }) =>
    sections.map(({ from, to, rows, yarn: own = yarn }) => ({
      ...{ piece: id, fabric, yarn: own },
      stitches: made * ((number(rows) * (number(from) + number(to))) / 2),
    })),
  );
}

function sumOf(each: readonly { readonly stitches: number }[]): number {
  return each.reduce((sum, { stitches }) => sum + stitches, 0);
}

describe("a pattern of format 1 that is upgraded", () => {
  it("is read from the kept database", () => {
    expect(kept.length).toBe(7);
    expect(patterns.flatMap(([, { pieces }]) => pieces).length).toBeGreaterThan(15);
  });

  it.each(patterns)("has exactly the stitches of its sections in every piece, yarn and size: %s", (_name, pattern) => {
    const parsed = parseStoredPattern(JSON.parse(JSON.stringify(pattern)));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const upgraded = parsed.document;
    for (const { id: size } of pattern.sizes) {
      const sections = stitchesOfSections(pattern, size);
      expect(predictStitches({ pattern: upgraded, size })).toEqual(
        pattern.pieces.map(({ id }) => ({ piece: id, stitches: sumOf(sections.filter(({ piece }) => piece === id)) })),
      );
      const { used, faults } = usedStitches(upgraded, size);
      expect(faults).toEqual([]);
      for (const yarn of pattern.yarns)
        for (const fabric of pattern.fabrics) {
          const isSuch = (use: { yarn: string; fabric: string }) => use.yarn === yarn.id && use.fabric === fabric.id;
          expect(sumOf(used.filter(isSuch))).toBe(sumOf(sections.filter(isSuch)));
        }
    }
  });

  it.each(patterns)("has the areas of its sections in every size: %s", (_name, pattern) => {
    const upgraded = upgradePattern(pattern);
    const { pieces, ...rest } = pattern;
    expect({ ...upgraded, garment: null, format: null }).toEqual({ ...rest, garment: null, format: null });
    for (const { id: size } of pattern.sizes) {
      const outline = outlineGarment(upgraded, size);
      expect(outline.pieces.map(({ piece }) => piece)).toEqual(pieces.map(({ id }) => id));
      outline.pieces.forEach(({ stitches, areaCm2, outline }, index) => {
        const piece = pieces[index];
        const fabric = pattern.fabrics.find(({ id }) => id === piece?.fabric);
        if (piece === undefined || fabric === undefined) throw new Error("no such piece");
        const { gauge, settles = { across: 1, along: 1 } } = fabric;
        const over = gauge.overCm ?? 10;
        const stitchCm2 = ((over * settles.across) / gauge.stitches) * ((over * settles.along) / gauge.rows);
        expect(areaCm2).toBeCloseTo((stitches / piece.made) * stitchCm2, 6);
        const layers = fabric.worked === undefined || fabric.worked === "flat" ? 1 : 2;
        expect(areaWithin(outline) * layers).toBeCloseTo(areaCm2, 5);
      });
    }
  });

  it("tells a fault of its pieces at the place that the document has", () => {
    const pattern = piecedPattern1();
    const [body, sleeve] = pattern.pieces;
    if (body === undefined || sleeve === undefined) throw new Error("it has two pieces");
    const faulty = { ...body, yarn: "silk", sections: [{ from: "height", to: "girth", rows: "height" }] };
    const parsed = parsePattern({ ...pattern, pieces: [faulty, { ...sleeve, id: "body" }] });
    expect(parsed.ok ? [] : parsed.faults.map(({ path, says }) => `${path}: ${says}`)).toEqual([
      "pieces[1].id: “body” appears twice in this list.",
      "pieces[0].yarn: there is no yarn “silk”.",
      "pieces[0].sections[0].from: “height” counts rows; here stitches are needed.",
      "pieces[0].sections[0].to: there is no count “girth”.",
    ]);
  });

  it("keeps what it leaves out open, and says so", () => {
    const [, pattern] = patterns[1] ?? [];
    if (pattern === undefined) throw new Error("no such pattern");
    expect(outlined(upgradePattern(pattern)).messages).toEqual([
      "step-2: It goes from 98 to 57 stitches, but its shaping is not specified. Enter how many stitches at a time, and at which edges.",
      "step-3: It goes from 57 to 98 stitches, but its shaping is not specified. Enter how many stitches at a time, and at which edges.",
    ]);
  });

  it("is valid as the pattern of format 2 that it has become", () => {
    for (const [, pattern] of patterns) {
      const size = pattern.sizes[0]?.id;
      const upgraded = parseOutlineInput({ pattern: upgradePattern(pattern), size });
      expect(upgraded.ok ? [] : upgraded.faults).toEqual([]);
      expect(parseOutlineInput({ pattern, size })).toEqual(upgraded);
    }
  });

  it("slopes at the edge that its shaping names, by its share in each row", () => {
    const section = { from: "width", to: "top", rows: "height", shaping: { stitches: 1, edges: "left" as const } };
    const base = patternDocument();
    const pattern = patternDocument({
      counts: [...base.counts, { id: "top", label: "Top", fabric: "main", direction: "stitches" }],
      pieces: [{ id: "front", label: "Front", fabric: "main", made: 2, yarn: "wool", sections: [section] }],
      yarns: [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }],
      grading: { ...base.grading, top: { small: 48, large: 58 } },
    });
    const { piece, messages } = outlined(pattern);
    expect(messages).toEqual([]);
    // From 98 to 48 over 100 rows, half a stitch a row: 97.75 in the first, 48.25 in the last; each stitch 0.5 cm.
    const { steps, stitches } = piece("front");
    expect(steps[0]?.onNeedle).toEqual([97.75]);
    expect(steps.at(-1)?.onNeedle).toEqual([48.25]);
    expect(steps[0]?.spans).toEqual([[-24.375, 24.5]]);
    expect(steps.at(-1)?.rightCm).toBe(24.5);
    // 2 × 100 × (98 + 48) ÷ 2.
    expect(stitches).toBe(14_600);
  });
});
