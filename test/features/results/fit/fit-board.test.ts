import { describe, expect, it } from "vitest";
import type { Tester } from "../../../../src/engine/pattern";
import { fitBoard, type FitArea } from "../../../../src/features/results/fit/fit-board";
import { fitCsv } from "../../../../src/features/results/fit/fit-csv";
import { fitScaleLabel } from "../../../../src/engine/reporting";
import {
  answersWords,
  easeWords,
  boundsWords,
  fitSentence,
  rightEaseSentences,
  sizeEaseWords,
} from "../../../../src/features/results/fit/fit-copy";
import { callDocument, reader } from "../../../factories/call";
import { resultsOf } from "../../../factories/results";

/** Testers on size whose bust feels so, −2 tight to 2 loose. */
function feeling(size: "small" | "large", scales: readonly (-2 | -1 | 0 | 1 | 2)[]): Tester[] {
  const bust = size === "small" ? 100 : 120;
  return scales.map((scale, index) =>
    reader(
      `${size}-${index}`,
      { bust },
      { size, fit: [{ area: "bust", scale, ...(index === 0 && { says: "=Snug" }) }] },
    ),
  );
}

function boardOf(testers: readonly Tester[]) {
  const document = callDocument(testers);
  const areas = fitBoard(resultsOf(document));
  return { document, areas };
}

function only(areas: readonly FitArea[]): FitArea {
  const [area] = areas;
  if (area === undefined) throw new Error("no area");
  return area;
}

describe("fit beside the differences, in words", { timeout: 60_000 }, () => {
  it("suggests changing the ease where a size comes out as planned but feels tight, and which ease would feel right", () => {
    const { areas, document } = boardOf([
      ...feeling("small", [0, 0, 0, 1, 0, 0]),
      ...feeling("large", [-1, -2, -1, 0, -1, -1]),
    ]);
    const area = only(areas);
    const [finding] = area.findings;
    if (finding === undefined) throw new Error("no finding");
    expect(fitSentence(finding, area, document.pattern)).toBe(
      "Bust comes out as planned but is tight for 5 of 6 in L. Change its ease, not its counts.",
    );
    expect(fitSentence({ ...finding, isOnSize: false }, area, document.pattern)).toBe(
      "Bust is tight for 5 of 6 in L, also allowing for how each garment came out. Change its ease, not only its counts.",
    );
    const given = { area, pattern: document.pattern };
    expect(easeWords(finding, { ...given, unit: "cm" })).toMatch(
      /^The pattern gives 10 cm of ease there\. 1\d\.\d cm would feel right \(9 chances in 10: 1\d\.\d to 2\d\.\d cm\)\.$/u,
    );
    expect(easeWords(finding, { ...given, unit: "in" })).toMatch(/^The pattern gives 3\.94 in of ease there\. /u);
    const [small, large, ...more] = rightEaseSentences(area, document.pattern, "cm");
    expect(small).toMatch(/^An ease of [\d.]+ cm feels right in S \(9 chances in 10: [\d.]+ to [\d.]+ cm\)\.$/u);
    expect(large).toMatch(/^An ease of [\d.]+ cm feels right in L /u);
    expect(more).toEqual([]);
  });

  it("says where the answers do not yet tell the ease", () => {
    const { areas, document } = boardOf(feeling("large", [0]));
    const area = only(areas);
    expect(area.findings).toEqual([]);
    const size = { size: "small", plannedCm: 10, rightCm: 11.04, lowCm: 9, highCm: 13.46, wishedWithinCm: 2 };
    expect(sizeEaseWords(size, "cm")).toBe("11.0 (9.0 to 13.5)");
    expect(sizeEaseWords({ ...size, highCm: null }, "cm")).toBe("11.0 (at least 9.0)");
    expect(sizeEaseWords({ ...size, lowCm: null }, "cm")).toBe("11.0 (at most 13.5)");
    expect(sizeEaseWords({ ...size, rightCm: null }, "cm")).toBeNull();
    const open = { ...area, ease: { area: "bust", measurement: "bust", sizes: [{ ...size, rightCm: null }] } };
    expect(rightEaseSentences(open, document.pattern, "cm")).toEqual([
      "The answers don’t yet tell which ease feels right in S.",
    ]);
  });

  it("names the sizes that a finding covers, and between which it begins or ends", () => {
    const { areas, document } = boardOf([...feeling("small", [1, 1, 2, 1]), ...feeling("large", [1, 1, 1])]);
    const area = only(areas);
    const [finding] = area.findings;
    if (finding === undefined) throw new Error("no finding");
    expect(fitSentence(finding, area, document.pattern)).toBe(
      "Bust comes out as planned but is loose for 7 of 7 in all sizes. Change its ease, not its counts.",
    );
    const four = {
      ...document.pattern,
      sizes: ["a", "b", "c", "d"].map((id) => ({ id, label: id, body: { bust: 1 } })),
    };
    const words = (from: string, to: string) => fitSentence({ ...finding, from, to }, area, four);
    expect(words("c", "d")).toContain("from c up");
    expect(words("a", "b")).toContain("up to b");
    const told = (of: Partial<typeof finding>) => boundsWords({ ...finding, ...of }, four);
    const [bToD, all] = [
      { earliest: "b", latest: "d" },
      { earliest: "d", latest: "d" },
    ];
    expect(told({ begins: bToD, ends: all })).toBe("It may begin anywhere from b to d (9 chances in 10).");
    expect(told({ begins: { earliest: "a", latest: "a" }, ends: bToD })).toBe(
      "It may end anywhere from b to d (9 chances in 10).",
    );
    expect(told({ begins: { earliest: "c", latest: "c" }, ends: all })).toBeNull();
  });

  it("says tight or short depending on whether the measurement is a girth", () => {
    expect(([-2, -1, 0, 1, 2] as const).map((scale) => fitScaleLabel(scale, { isGirth: true }))).toEqual([
      "far too tight",
      "a little tight",
      "as wished",
      "a little loose",
      "far too loose",
    ]);
    expect(fitScaleLabel(-1, { isGirth: false })).toBe("a little tight or short");
  });

  it("shows every size's answers beside the verdict, and where there are none", () => {
    const area = only(boardOf(feeling("large", [-1, 0, -1])).areas);
    expect(area.rows.map(({ counts }) => answersWords(counts, area))).toEqual([
      "no answers",
      "2 a little tight, 1 as wished",
    ]);
    expect(area.rows.map(({ cells }) => cells.map(({ measurement }) => measurement))).toEqual([["bust"], ["bust"]]);
  });

  it("is empty where nobody answered about the fit", () => {
    expect(boardOf([reader("t", { bust: 100 })]).areas).toEqual([]);
  });

  it("is exported with comments that cannot become formulas", () => {
    const { areas, document } = boardOf(feeling("large", [-1, 0, -1]));
    const answers = ([-1, 0, -1] as const).map((scale, index) => ({
      ...{
        tester: `large-${index}`,
        name: index === 0 ? "Alva" : `large-${index}`,
        size: "large",
        area: "bust",
        scale,
      },
      says: index === 0 ? "=Snug" : null,
    }));
    const lines = fitCsv(answers, { areas, pattern: document.pattern, unit: "cm" }).split("\r\n");
    expect(lines[0]).toBe("area,size,tester,scale,feels,says,differences");
    expect(lines[1]).toMatch(/^bust,L,Alva,-1,a little tight,"'=Snug",Bust: /);
    expect(lines).toHaveLength(1 + 3);
  });
});
