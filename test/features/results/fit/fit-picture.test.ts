import { describe, expect, it } from "vitest";
import { fitBoard } from "../../../../src/features/results/fit/fit-board";
import { areasInSize, fitMarks, fitTally, pictureSize } from "../../../../src/features/results/fit/fit-picture";
import { callDocument, reader } from "../../../factories/call";
import { resultsOf } from "../../../factories/results";

type Scale = -2 | -1 | 0 | 1 | 2;

function boardOf(small: readonly Scale[], large: readonly Scale[]) {
  const feeling = (size: "small" | "large", scales: readonly Scale[]) =>
    scales.map((scale, index) =>
      reader(`${size}-${index}`, { bust: size === "small" ? 100 : 120 }, { size, fit: [{ area: "bust", scale }] }),
    );
  const document = callDocument([...feeling("small", small), ...feeling("large", large)]);
  const areas = fitBoard(resultsOf(document));
  return { areas, pattern: document.pattern };
}

describe("fit in one size, as a picture", { timeout: 60_000 }, () => {
  it("counts far too and a little together", () => {
    // One far too tight, two a little tight, one as wished, one far too loose.
    expect(fitTally([1, 2, 1, 0, 1])).toEqual({ tight: 3, right: 1, loose: 1 });
  });

  it("starts with the size that most find tight or loose, then the one with most answers, then the smallest", () => {
    const begun = (small: readonly Scale[], large: readonly Scale[]) => {
      const { areas, pattern } = boardOf(small, large);
      return pictureSize(pattern, areas, undefined)?.id;
    };
    expect(begun([0, 0, 0], [-1, 0])).toBe("large");
    expect(begun([0], [0, 0])).toBe("large");
    expect(begun([1], [-1])).toBe("small");
  });

  it("shows the requested size, and none that the pattern does not have", () => {
    const { areas, pattern } = boardOf([0], [-1]);
    expect(pictureSize(pattern, areas, "small")?.id).toBe("small");
    expect(pictureSize(pattern, areas, "huge")).toBeNull();
    expect(pictureSize(pattern, areas, ["small", "large"])).toBeNull();
  });

  it("is shown at the measurement that governs the area, where someone of that size answered", () => {
    const { areas, pattern } = boardOf([-1, 0], []);
    const [small, large] = pattern.sizes;
    if (small === undefined || large === undefined) throw new Error("no sizes");
    expect(fitMarks(areas, small)).toEqual([
      { measurement: "bust", tally: { tight: 1, right: 1, loose: 0 }, title: "Bust: 1 a little tight, 1 as wished" },
    ]);
    expect(fitMarks(areas, large)).toEqual([]);
    expect(areasInSize(areas, large)).toHaveLength(1);
  });
});
