import { describe, expect, it } from "vitest";
import { plantedCall } from "../../../../src/engine/calibration";
import type { Tester } from "../../../../src/engine/pattern";
import { analyseCall } from "../../../../src/engine/results";
import { knittedPullover } from "../../../../src/engine/simulation";
import { driftWords } from "../../../../src/features/results/gaps/drift-copy";
import {
  testerBoard,
  testersToPlace,
  type Comparison,
  type TesterRow,
} from "../../../../src/features/results/habits/habits-board";
import { boardSentence, noSentence, testerSentences } from "../../../../src/features/results/habits/habits-copy";
import { testersCsv } from "../../../../src/features/results/habits/habits-csv";
import { callDocument, reader } from "../../../factories/call";
import { patternDocument } from "../../../factories/pattern";
import { resultsOf } from "../../../factories/results";

function boardOf(testers: readonly Tester[]) {
  const { testers: rows, ...results } = resultsOf(callDocument(testers), { t0: "Alva" });
  const named = testersToPlace(results.consistency);
  const places = rows
    .map(({ tester, name }, position) => ({ tester, name, position }))
    .filter(({ tester }) => named.includes(tester));
  return testerBoard({ ...results, rows, testers: rows.length, places });
}

const [measurement] = patternDocument().measurements;

/** A row whose measurements lie so far from the others', all of one letter. */
function rowOf(values: readonly (number | null)[], change: Partial<Comparison> = {}): TesterRow {
  if (measurement === undefined) throw new Error("no measurement");
  const comparisons = values.map((h) => ({
    ...{ measurement, h, standing: "usual" as const, k: null, scatter: "usual" as const },
    ...change,
  }));
  return { tester: "t", name: "T", size: "S", driftAcross: 0, driftAlong: 0, comparisons, wrongChance: null };
}

describe("testers compared with each other", { timeout: 60_000 }, () => {
  it("marks one who differs where all others agree, however many there are", () => {
    // By theorem: one of n who differs while the others agree has the largest h there is, (n − 1) ÷ √n.
    const others = Array.from({ length: 6 }, (_, index) => reader(`t${index + 1}`, { bust: 100, length: 40 }));
    const board = boardOf([reader("t0", { bust: 103, length: 40 }), ...others]);
    const [bust] = board.rows[0]?.comparisons ?? [];
    expect(bust?.h).toBeCloseTo(6 / Math.sqrt(7), 10);
    expect(bust?.standing).toBe("rare");
    expect(board.standOut).toEqual({ testers: [{ tester: "t0", name: "Alva", position: 0 }], all: 1 });
    expect(boardSentence(board)).toBe("1 of 7 testers stands out from the others:");
    expect(testerSentences(board.rows[0] ?? rowOf([]))).toContain("Far larger than the others’: A Bust.");
  });

  it("compares nobody below three, and says so", () => {
    const board = boardOf([reader("t0", { bust: 100 }), reader("t1", { bust: 104 })]);
    expect(board.limits).toBeNull();
    expect(boardSentence(board)).toBe(
      "2 testers so far. It takes three who report the same measurement to compare them.",
    );
    expect(board.rows.flatMap(({ comparisons }) => comparisons.map(({ h }) => h))).toEqual([null, null, null, null]);
  });

  it("says all measurements are larger or smaller where chance rarely makes them so", () => {
    // By hand: six of six by two sides is 2 ÷ 2⁶, 3 %; five of six is 2 × 7 ÷ 2⁶, 22 %; eight of nine 2 × 10 ÷ 2⁹, 4 %.
    expect(testerSentences(rowOf([0.8, 0.9, 0.7, 1, 0.6, 0.9]))).toEqual([
      "All their measurements are larger than the others’.",
    ]);
    expect(testerSentences(rowOf([-0.8, -0.9, -0.7, -1, -0.6, -0.9]))).toEqual([
      "All their measurements are smaller than the others’.",
    ]);
    expect(testerSentences(rowOf([0.8, 0.9, 0.7, 1, 0.6, -0.2]))).toEqual([]);
    expect(testerSentences(rowOf([0.8, 0.9, 0.7, 1, 0.6, 0.9, 0.9, 0.9, -0.1]))).toEqual([
      "8 of their 9 measurements are larger than the others’.",
    ]);
    expect(testerSentences(rowOf([0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1]))).toEqual([]);
  });

  it("marks those whose repeated measurements differ", () => {
    expect(testerSentences(rowOf([0], { k: 2, scatter: "rare" }))).toEqual([
      "Their repeated measurements differ far more than others’: A Bust.",
    ]);
    const repeat = (id: string, cm: readonly number[]): Tester => ({
      ...reader(id, {}),
      readings: cm.map((value) => ({ measurement: "bust", cm: value })),
    });
    // By theorem: of p who repeat, one who alone scatters has k = √p, the largest there is.
    const steady = Array.from({ length: 5 }, (_, index) => repeat(`t${index + 1}`, [100, 100]));
    const [bust] = boardOf([repeat("t0", [99, 101]), ...steady]).rows[0]?.comparisons ?? [];
    expect(bust?.k).toBeCloseTo(Math.sqrt(6), 10);
    expect(bust?.scatter).toBe("rare");
  });

  it("says whose measurements are all in doubt, and names them among those who stand out", () => {
    const { call, mistakes } = plantedCall({
      ...{ pattern: knittedPullover(), design: "3 a size", fault: "nothing", entryErrorShare: 0, seed: 4 },
      trouble: "one tester wholly wrong",
    });
    const { doubted, standOut } = analyseCall(call).consistency;
    expect(doubted.map(({ tester }) => tester)).toEqual([mistakes[0]?.tester]);
    expect(standOut).toContain(mistakes[0]?.tester);
    expect(testerSentences({ ...rowOf([0.3]), wrongChance: 0.83 })).toEqual([
      "All their measurements together are 83 % likely a mistake, so they count for little.",
    ]);
  });

  it("says why there is nothing to compare", () => {
    expect(noSentence({ ...rowOf([]), driftAcross: null })).toBe(
      "None of their measurements counts, so there is nothing to compare.",
    );
    expect(noSentence(rowOf([0.3]))).toBe("Nothing unusual.");
  });

  it("are exported with a line per measurement", () => {
    const others = Array.from({ length: 2 }, (_, index) => reader(`t${index + 1}`, { bust: 100 }));
    const lines = testersCsv(boardOf([reader("t0", { bust: 103 }), ...others])).split("\r\n");
    expect(lines).toHaveLength(1 + 3 * 2);
    // By the same theorem, 2 ÷ √3.
    expect(lines[1]).toMatch(/^Alva,S,.*,A,Bust,1\.1547\d*,/);
  });
});

describe("the drift in words", () => {
  it("gives both directions in one sentence, and leaves out less than a hundredth", () => {
    expect(driftWords({ driftAcross: 0.031, driftAlong: -0.012 })).toBe(
      "Their fabric came out 3 % wider and 1 % shorter than their swatch.",
    );
    expect(driftWords({ driftAcross: -0.02, driftAlong: 0.009 })).toBe(
      "Their fabric came out 2 % narrower than their swatch.",
    );
    expect(driftWords({ driftAcross: 0.001, driftAlong: null })).toBeNull();
  });
});
