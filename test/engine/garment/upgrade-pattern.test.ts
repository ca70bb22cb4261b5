import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { outlineGarment, parseOutlineInput } from "@/engine/garment";
import { parseStoredPattern, upgradePattern, type PatternDocument } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import { crochetedCardigan, knittedPullover } from "@/engine/simulation";
import { saltmarshPattern } from "../../../prisma/demo/saltmarsh-pattern";
import { patternDocument } from "../../factories/pattern";
import { piecedPattern } from "../../factories/pieced-pattern";
import { areaWithin, outlined } from "./outlined";

/** Every pattern that the kept database of an earlier version holds, as it was stored. */
function keptPatterns(): PatternDocument[] {
  const lines = gunzipSync(readFileSync("test/database/dumps/main-0008.sql.gz")).toString().split("\n");
  return lines.flatMap((line) => {
    const [, escaped, text] = /^INSERT INTO "revision" .*?, (E?)'(\{.*\})', '/.exec(line) ?? [];
    if (text === undefined) return [];
    const json = text.replaceAll("''", "'");
    const parsed = parseStoredPattern(JSON.parse(escaped === "E" ? json.replaceAll("\\\\", "\\") : json));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    return [parsed.document];
  });
}

const kept = keptPatterns();
const patterns = [saltmarshPattern, crochetedCardigan(), knittedPullover(), piecedPattern(), ...kept].map(
  (pattern, index) => [`${pattern.name}, ${index + 1}`, pattern] as const,
);

describe("a pattern of format 1 that is upgraded", () => {
  it("is read from the demo, the simulation and the kept database", () => {
    expect(kept.length).toBe(7);
    expect(patterns.flatMap(([, { pieces }]) => pieces).length).toBeGreaterThan(15);
  });

  it.each(patterns)("has the stitches and areas of its sections in every size: %s", (_name, pattern) => {
    const upgraded = upgradePattern(pattern);
    const { pieces, ...rest } = pattern;
    expect({ ...upgraded, garment: null, format: null }).toEqual({ ...rest, garment: null, format: null });
    for (const { id: size } of pattern.sizes) {
      const outline = outlineGarment(upgraded, size);
      // Source: made × Σ rows × (from + to) ÷ 2, as `predict` has it for format 1.
      const expected = predict({ pattern, size }).stitches;
      expect(outline.pieces.map(({ piece }) => piece)).toEqual(expected.map(({ piece }) => piece));
      outline.pieces.forEach(({ stitches, areaCm2, outline }, index) => {
        const piece = pieces[index];
        const fabric = pattern.fabrics.find(({ id }) => id === piece?.fabric);
        if (piece === undefined || fabric === undefined) throw new Error("no such piece");
        expect(stitches).toBeCloseTo(expected[index]?.stitches ?? Number.NaN, 6);
        const { gauge, settles = { across: 1, along: 1 } } = fabric;
        const over = gauge.overCm ?? 10;
        const stitchCm2 = ((over * settles.across) / gauge.stitches) * ((over * settles.along) / gauge.rows);
        expect(areaCm2).toBeCloseTo((stitches / piece.made) * stitchCm2, 6);
        const layers = fabric.worked === undefined || fabric.worked === "flat" ? 1 : 2;
        expect(areaWithin(outline) * layers).toBeCloseTo(areaCm2, 5);
      });
    }
  });

  it("keeps what it leaves out open, and says so", () => {
    expect(outlined(upgradePattern(saltmarshPattern), "size-m").messages).toEqual([
      "step-3: It starts on 114 stitches, and there are 228. Say what becomes of the difference: stitches that are bound off, held or added, and at which edge.",
    ]);
    expect(outlined(upgradePattern(crochetedCardigan()), "l").messages).toEqual([
      "step-8: It goes from 38 to 65 stitches, but its shaping is not specified. Enter how many stitches at a time, and at which edges.",
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
    const { piece, messages } = outlined(upgradePattern(pattern));
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
