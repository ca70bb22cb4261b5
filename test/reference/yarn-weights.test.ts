import { describe, expect, it } from "vitest";
import { z } from "zod";
import { YARN_WEIGHT_SYSTEM, YARN_WEIGHTS, yarnClasses, type Band } from "@/engine/trade-tables";
import { readJson } from "./read-json";

const endsSchema = z.tuple([z.number().nullable(), z.number().nullable()]);
const fileSchema = z.looseObject({
  rows: z.array(
    z.strictObject({
      n: z.number(),
      name: z.string(),
      knit_st_per_4in: endsSchema,
      needle_mm: endsSchema,
      crochet_st_per_4in: endsSchema,
      crochet_stitch: z.string(),
      hook_mm: z.union([endsSchema, z.string()]),
    }),
  ),
});

function ends({ min, max }: Band): (number | null)[] {
  return [min, max];
}

function names(craft: "knitting" | "crochet", stitches: number): string[] {
  return yarnClasses(craft, stitches).map(({ name }) => name);
}

describe("Standard Yarn Weight System (read in agreeing copies; cyc_yarn_weight.json)", () => {
  const { rows } = readJson("cyc_yarn_weight.json", fileSchema);

  it("has every class with its gauges and tools", () => {
    const ours = YARN_WEIGHTS.map(({ number, name, knitting, crochet }) => ({
      n: number,
      name,
      knit_st_per_4in: ends(knitting.stitches),
      needle_mm: knitting.toolsMm.flatMap(ends),
      crochet_st_per_4in: ends(crochet.stitches),
      crochet_stitch: crochet.stitch,
      hook_mm: crochet.toolsMm.length === 1 ? crochet.toolsMm.flatMap(ends) : crochet.toolsMm.map(ends),
    }));
    // The file writes lace’s hooks as words: “steel 1.6-1.4; regular 2.25”.
    const theirs = rows.map((row) =>
      row.n === 0
        ? {
            ...row,
            hook_mm: [
              [1.4, 1.6],
              [2.25, 2.25],
            ],
          }
        : row,
    );
    expect(rows[0]?.hook_mm).toBe("steel 1.6-1.4; regular 2.25");
    expect(ours).toEqual(theirs);
    expect(YARN_WEIGHT_SYSTEM.mark).toBe("read");
  });

  it("puts one crochet gauge into two classes where the bands overlap: 12–17 with 16–20, and with 11–14", () => {
    expect(names("crochet", 16)).toEqual(["Fine", "Light"]);
    expect(names("crochet", 13)).toEqual(["Light", "Medium"]);
    expect(names("knitting", 23)).toEqual(["Fine", "Light"]);
    expect(names("knitting", 18)).toEqual(["Medium"]);
  });

  it("leaves no gap between classes of whole stitches, and none for halves", () => {
    for (let halves = 2; halves <= 80; halves += 1) {
      expect(names("knitting", halves / 2), `knitting ${halves / 2}`).not.toEqual([]);
      expect(names("crochet", halves / 2), `crochet ${halves / 2}`).not.toEqual([]);
    }
    expect(names("knitting", 41)).toEqual([]);
  });
});
