import { describe, expect, it } from "vitest";
import { parseLength, parseNumber } from "@/engine/units";

describe("a number as people type it", () => {
  it.each([
    ["38.5", 38.5],
    ["38,5", 38.5],
    [" 38 ", 38],
    ["12 3/8", 12.375],
    ["12-3/8", 12.375],
    ["12½", 12.5],
    ["½", 0.5],
    ["3/4", 0.75],
    ["-1 1/2", -1.5],
    ["−2", -2],
    ["+2", 2],
    [".5", 0.5],
  ])("reads %j as %d", (typed, value) => {
    expect(parseNumber(typed)).toEqual({ ok: true, value });
  });

  it.each(["", "  ", "abc", "12 3/0", "1.234,5", "1,234.5", "1,2,3", "12 3", "1e5", "Infinity", "0x10"])(
    "refuses %j with a sentence",
    (typed) => {
      const parsed = parseNumber(typed);
      expect(parsed.ok).toBe(false);
      if (!parsed.ok) expect(parsed.message).toMatch(/^[A-Z“].*\.$/);
    },
  );
});

describe("a length as people type it", () => {
  it.each([
    ["38,5", "cm", 38.5],
    ["12 3/8", "in", 12.375 * 2.54],
    ["12 3/8 in", "cm", 12.375 * 2.54],
    ['12 3/8"', "cm", 12.375 * 2.54],
    ["96 cm", "in", 96],
    ["965mm", "cm", 96.5],
  ] as const)("reads %j in a %s field as %d cm", (typed, unit, cm) => {
    const parsed = parseLength(typed, unit);
    expect(parsed.ok && parsed.cm).toBeCloseTo(cm, 12);
  });
});
