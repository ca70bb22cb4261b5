import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { scoreCorpus } from "@/cli/import-corpus";
import { importTable } from "@/cli/import-rows";

it("has at least 30 invented tables, each with cells to compare", () => {
  const tables = ["first", "second", "third", "fourth"].flatMap(scoreCorpus);
  expect(tables.length).toBeGreaterThanOrEqual(30);
  expect(tables.filter(({ cells }) => cells < 10)).toEqual([]);
});

it("reads the tables as the kept figures say", () => {
  expect(readFileSync("test/figures/calibration-import.txt", "utf8")).toBe(importTable());
});
