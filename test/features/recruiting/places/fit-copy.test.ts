import { describe, expect, it } from "vitest";
import { choiceWords, differenceWords, fitWord } from "../../../../src/features/recruiting/places/fit-copy";

const difference = (cm: number, beyondCm = 0) => ({ measurement: "bust", cm, d: 0, beyondCm });

const said = {
  ...({ forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us", timeZone: null } as const),
  ...({ experience: "some", handle: "", pastWork: "" } as const),
};

describe("a body beside a size", () => {
  it("is told in the reader's unit, the side as a word", () => {
    expect(differenceWords(difference(2), "cm")).toBe("2.0 cm above");
    expect(differenceWords(difference(-1.5), "cm")).toBe("1.5 cm below");
    // By hand: 2.54 cm are an inch.
    expect(differenceWords(difference(-2.54), "in")).toBe("1 in below");
    expect(differenceWords(difference(0.01), "cm")).toBe("the same");
    expect(differenceWords(difference(9, 3), "cm")).toBe("9.0 cm above, 3.0 cm out of reach");
    expect(differenceWords(difference(9, 1e-3), "in")).toContain("a little out of reach");
  });

  it("is close to a quarter of the way to the next size, far where another size is nearer", () => {
    // Half of the half distance: d = 0.5 each. At d = 1 the next size is as near.
    expect(fitWord(2 * 0.25, 2)).toBe("close");
    expect(fitWord(2 * 0.26, 2)).toBe("fair");
    expect(fitWord(2, 2)).toBe("fair");
    expect(fitWord(2.1, 2)).toBe("far");
    expect(fitWord(0, 0)).toBe("close");
  });

  it("names the preference", () => {
    const wishes = { ...said, accepts: ["s", "m", "l"], prefers: ["m", "s"] };
    expect(choiceWords(wishes, "m")).toBe("their 1st choice");
    expect(choiceWords(wishes, "s")).toBe("their 2nd choice");
    expect(choiceWords(wishes, "l")).toBe("not a preferred size");
    expect(choiceWords(wishes, "xl")).toBe("a size they did not accept");
    expect(choiceWords({ ...said, accepts: null, prefers: [] }, "m")).toBe("no preference");
  });
});
