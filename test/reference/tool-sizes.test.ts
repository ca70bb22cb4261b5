import { describe, expect, it } from "vitest";
import { z } from "zod";
import { readToolSize } from "@/engine/tables/read-tool-size";
import { US_TOOL_SIZES } from "@/engine/trade-tables/us-tool-sizes";
import { readJson } from "./read-json";

const fileSchema = z.looseObject({
  rows: z.array(z.looseObject({ n: z.number(), needle_mm: z.array(z.number().nullable()), hook_mm: z.unknown() })),
});

/** US names that the yarn weight table writes beside the millimetres of each class, read in one copy. */
const US_NEEDLES: Readonly<Record<number, readonly [string, string]>> = {
  0: ["000", "1"],
  1: ["1", "3"],
  2: ["3", "5"],
  3: ["5", "7"],
  4: ["7", "9"],
  5: ["9", "11"],
  6: ["11", "17"],
};
const US_HOOKS: Readonly<Record<number, readonly [string, string]>> = {
  1: ["B-1", "E-4"],
  2: ["E-4", "7"],
  3: ["7", "I-9"],
  4: ["I-9", "K-10½"],
  5: ["K-10½", "M-13"],
  6: ["M-13", "Q"],
};

function mm(text: string, craft: "knitting" | "crochet"): number | null {
  const read = readToolSize(`US ${text}`, craft);
  return read.ok ? read.value : null;
}

describe("US needle and hook sizes (ends of the Craft Yarn Council's yarn classes; cyc_yarn_weight.json)", () => {
  const { rows } = readJson("cyc_yarn_weight.json", fileSchema);

  it.each(Object.entries(US_NEEDLES))("has the needles of class %s", (n, names) => {
    const row = rows.find((each) => each.n === Number(n));
    expect(names.map((name) => mm(name, "knitting"))).toEqual(row?.needle_mm);
  });

  it.each(Object.entries(US_HOOKS))("has the hooks of class %s", (n, names) => {
    const row = rows.find((each) => each.n === Number(n));
    expect(names.map((name) => mm(name, "crochet"))).toEqual(row?.hook_mm);
  });

  it("marks the sizes between as recalled", () => {
    expect(US_TOOL_SIZES.mark).toBe("memory");
  });
});
