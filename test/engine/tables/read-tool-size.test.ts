import { describe, expect, it } from "vitest";
import { readToolSize } from "@/engine/tables/read-tool-size";

const mm = (text: string, craft: "knitting" | "crochet" = "knitting") => {
  const read = readToolSize(text, craft);
  return read.ok ? read.value : null;
};

describe("the size of needles or a hook, as typed", () => {
  it.each([
    ["6", 6],
    ["6 mm", 6],
    ["4,0", 4],
    ["0,4", 0.4],
    ["US 8 (5 mm)", 5],
    ["US 6 3.75mm", 3.75],
  ])("reads “%s” as millimetres", (text, expected) => {
    expect(mm(text)).toBe(expected);
    expect(mm(text, "crochet")).toBe(expected);
  });

  it.each([
    ["US 6", 4],
    ["us6", 4],
    ["U.S. 6", 4],
    ["US size 6", 4],
    ["6 US", 4],
    ["US 10½", 6.5],
    ["US 10 1/2", 6.5],
    ["US 10.5", 6.5],
    ["US 00", 1.75],
    ["000", 1.5],
    ["US 1,5", 2.5],
  ])("reads “%s” as the number of knitting needles", (text, expected) => {
    expect(mm(text)).toBe(expected);
  });

  it.each([
    ["H", 5],
    ["H/8", 5],
    ["US H/8", 5],
    ["US H-8", 5],
    ["h 8 hook", 5],
    ["K-10½", 6.5],
    ["US 7", 4.5],
    ["M/N-13", 9],
    ["N/P-15", 10],
    ["M", 9],
  ])("reads “%s” as the name of a crochet hook", (text, expected) => {
    expect(mm(text, "crochet")).toBe(expected);
  });

  it.each([
    ["H/8", "knitting"],
    ["US 0", "crochet"],
    ["US 12", "knitting"],
    ["N", "crochet"],
    ["H/7", "crochet"],
    ["medium", "crochet"],
    ["US", "crochet"],
    ["", "knitting"],
  ] as const)("does not guess at “%s” in %s", (text, craft) => {
    expect(mm(text, craft)).toBeNull();
  });

  it("says how to write a size that it does not know", () => {
    expect(readToolSize("US 12", "knitting")).toEqual({
      ok: false,
      message: "“US 12” is no size that we know. Write it like 5 mm or US 8.",
    });
    expect(readToolSize("medium", "crochet")).toMatchObject({ message: expect.stringContaining("5 mm or H-8") });
    expect(readToolSize("90", "crochet")).toMatchObject({ message: expect.stringContaining("between 0.25 and 60 mm") });
  });
});
