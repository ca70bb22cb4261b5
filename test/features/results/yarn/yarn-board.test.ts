import { describe, expect, it } from "vitest";
import type { PatternDocument1, Tester } from "../../../../src/engine/pattern";
import { yarnBoard, type YarnBoard } from "../../../../src/features/results/yarn/yarn-board";
import { yarnCsv } from "../../../../src/features/results/yarn/yarn-csv";
import {
  allowanceSentence,
  emptyYarn,
  publishSentence,
  untestedSentence,
  unworkedSentences,
  yarnSuspectWords,
} from "../../../../src/features/results/yarn/yarn-copy";
import { yarnQuerySchema } from "../../../../src/features/results/schema";
import { callDocument } from "../../../factories/call";
import { garmentPattern } from "../../../factories/garment-pattern";
import { patternDocument, tester } from "../../../factories/pattern";
import { resultsOf } from "../../../factories/results";

const PIECES: PatternDocument1["pieces"] = [
  {
    ...{ id: "front", label: "Front", fabric: "main", made: 1, yarn: "wool" },
    sections: [{ from: "width", to: "width", rows: "height" }],
  },
];

function boardOf(
  testers: readonly Tester[],
  asked: { unit?: "cm" | "in"; roundTo?: number; pieces?: typeof PIECES } = {},
): YarnBoard {
  const { unit = "cm", roundTo = 10, pieces = PIECES } = asked;
  const yarns = [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }];
  const document = callDocument(testers, { pattern: patternDocument({ pieces, yarns }) });
  return yarnBoard(resultsOf(document, { t0: "Alva" }), { unit, roundTo });
}

function sheetOf(board: YarnBoard) {
  const [sheet] = board.sheets;
  if (sheet === undefined) throw new Error("no yarn");
  return sheet;
}

/** A tester of the small size who weighed so many grams of a yarn that runs 200 m to 100 g. */
function weighed(id: string, grams: number): Tester {
  return tester({ id, yarn: [{ yarn: "wool", grams, metresPer100g: 200 }] });
}

describe("yarn by size", { timeout: 60_000 }, () => {
  it("is estimated from one tester for every size, and rounded up", () => {
    const sheet = sheetOf(boardOf([weighed("t0", 150)]));
    // By hand: the tester used 300 m for 98 × 100 stitches; L has 118 × 110, so 300 × 12980 ÷ 9800 = 397.35 m.
    expect(sheet.rows.map(({ expectedMetres }) => Number(expectedMetres?.toFixed(2)))).toEqual([300, 397.35]);
    for (const { upperMetres, publishMetres, balls } of sheet.rows) {
      expect((publishMetres ?? 0) % 10).toBe(0);
      expect((publishMetres ?? 0) - (upperMetres ?? 0)).toBeGreaterThanOrEqual(0);
      expect((publishMetres ?? 0) - (upperMetres ?? 0)).toBeLessThan(10);
      expect(balls).toBe(Math.ceil((upperMetres ?? 0) / 100));
    }
    // By hand: 300 m ÷ 9800 stitches.
    expect(sheet.perStitch.map(({ cm }) => Number(cm.toFixed(3)))).toEqual([3.061]);
    // Of one weighing little is known, so that the allowance is large.
    expect(allowanceSentence(sheet)).toMatch(/^Of what 9 in 10 makers need, 1\d( to 1\d)? % is an allowance: /);
    expect(untestedSentence(sheet)).toBe("Nobody has weighed it in L: estimated from the other sizes.");
  });

  it("is given in whole yards, rounded in yards, for readers of inches", () => {
    const board = boardOf([weighed("t0", 150)], { unit: "in", roundTo: 25 });
    const yards = sheetOf(board).rows.map(({ publishMetres }) => (publishMetres ?? 0) / 0.9144);
    for (const value of yards) expect(Math.abs(value / 25 - Math.round(value / 25))).toBeLessThan(1e-9);
    const [small, large] = yards.map((value) => Math.round(value));
    expect(publishSentence(sheetOf(board), "yd")).toBe(`Publish from ${small} yd in S to ${large} yd in L.`);
    expect(yarnCsv(board).split("\r\n")[1]).toMatch(new RegExp(`^Wool,S,9800,328\\.08\\d*,[\\d.]+,${small},\\d+,1$`));
  });

  it("says what is missing where there are no results", () => {
    expect(emptyYarn(sheetOf(boardOf([tester()])))).toMatch(/^No tester has weighed this yarn yet\./);
    expect(emptyYarn(sheetOf(boardOf([weighed("t0", 150)], { pieces: [] })))).toMatch(/^No piece of the pattern/);
  });

  it("says in which sizes the garment cannot be worked, so that the amounts are those of the rest", () => {
    const pattern = garmentPattern({
      counts: { width: ["stitches", 40, 50] },
      pieces: [{ id: "front" }],
      steps: [
        { in: "front", do: "start", how: "cast-on", stitches: { count: "width" }, worked: "flat" },
        { in: "front", do: "work", rows: 10 },
        { id: "armhole", in: "front", do: "bind-off", at: "left", each: 44 },
        { in: "front", do: "end", how: "bind-off", edge: "top" },
      ],
    });
    const board = yarnBoard(resultsOf(callDocument([], { pattern }), {}), { unit: "cm", roundTo: 10 });
    expect(unworkedSentences(board)).toEqual([
      expect.stringMatching(/^The garment cannot be worked in size S: There are 40 stitches left in “front”/),
    ]);
    expect(unworkedSentences(boardOf([weighed("t0", 150)]))).toEqual([]);
  });

  it("flags a weight in ounces, excludes it and says what it would be", () => {
    // By hand: 150 g are 5.29 oz.
    const board = boardOf([weighed("t0", 5.29), weighed("t1", 150), weighed("t2", 155), weighed("t3", 146)]);
    const sheet = sheetOf(board);
    expect(sheet.reported.map(({ name, isSetAside }) => [name, isSetAside])).toEqual([
      ["Alva", true],
      ["t1", false],
      ["t2", false],
      ["t3", false],
    ]);
    expect(sheet.suspects.map((suspect) => yarnSuspectWords(suspect, board))).toEqual([
      "Alva: 5.3 g looks like ounces entered as grams, and would be 150 g. It does not count.",
    ]);
  });

  it("rounds as the address asks, and to ten for anything else", () => {
    expect([{ round: "25" }, { round: "7" }, {}].map((asked) => yarnQuerySchema.parse(asked).round)).toEqual([
      25, 10, 10,
    ]);
  });
});
