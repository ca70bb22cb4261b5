import { describe, expect, it } from "vitest";
import { correctedNumbers, wayField } from "@/features/patterns/schema";

const PATH = "allowances.neck-band.cm";

function read(text: string, way?: string) {
  return correctedNumbers([[PATH, text], ...(way === undefined ? [] : [[wayField(PATH), way] as const])])[PATH];
}

describe("a corrected allowance", () => {
  it("gets its sign from the word beside it", () => {
    expect(read("2,8", "takes")).toBe("-2,8");
    expect(read(" 3/4 in", "takes")).toBe("-3/4 in");
    expect(read("2.8", "adds")).toBe("2.8");
  });

  it("keeps a sign that was typed, and what is no number", () => {
    expect(read("-2.8", "takes")).toBe("-2.8");
    expect(read("−2.8", "adds")).toBe("−2.8");
    expect(read("about two", "takes")).toBe("about two");
  });

  it("passes over every other entry of the address", () => {
    expect(
      correctedNumbers([
        ["cell", "m.bust"],
        [wayField(PATH), "takes"],
        ["grading.body.m", "80"],
      ]),
    ).toEqual({
      "grading.body.m": "80",
    });
  });
});
