import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";

/** By file of figures, the rows that are known to meet their bar: what each begins with. */
const KNOWN = z
  .record(z.string(), z.array(z.string()))
  .parse(JSON.parse(readFileSync("test/figures/met-bars.json", "utf8")));

/** Rows that a bench printed with its verdict: what stands before it, and whether the bar is met. */
function verdicts(file: string): Map<string, boolean> {
  const lines = readFileSync(`test/figures/${file}`, "utf8").split("\n");
  return new Map(
    lines.flatMap((line) => {
      const [, name, verdict] = /^(.*?) {2,}.* {2}(met|missed)$/.exec(line) ?? [];
      return name === undefined ? [] : [[name, verdict === "met"] as const];
    }),
  );
}

describe.each(Object.entries(KNOWN))("figures in %s", (file, rows) => {
  const found = verdicts(file);

  it.each(rows)("%s still meets its bar", (row) => {
    expect(found.get(row)).toBe(true);
  });

  it("has every row that meets its bar listed as such", () => {
    const met = [...found].flatMap(([name, isMet]) => (isMet ? [name] : []));
    expect(met.toSorted()).toEqual([...rows].toSorted());
  });
});

it("lists figures that exist", () => {
  expect(readdirSync("test/figures")).toEqual(expect.arrayContaining(Object.keys(KNOWN)));
});
