import { execFileSync } from "node:child_process";
import { basename, resolve } from "node:path";
import { describe, expect, it, vi } from "vitest";
import { z } from "zod";

vi.setConfig({ testTimeout: 120_000 });

const CONFIG = resolve(".dependency-cruiser.cjs");

const reportSchema = z.object({
  summary: z.object({
    violations: z.array(z.object({ from: z.string(), rule: z.object({ name: z.string() }) })),
    ruleSetUsed: z.object({ forbidden: z.array(z.object({ name: z.string() })) }),
  }),
  modules: z.array(z.object({ source: z.string() })),
});

/** What the rules say of a tree, which is laid out like the real one below `folder`. */
function judge(folder: string) {
  const cruiser = resolve("node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const flags = ["--config", CONFIG, "--output-type", "json", "src"];
  const printed = execFileSync(process.execPath, [cruiser, ...flags], { cwd: folder, maxBuffer: 2 ** 28 });
  return reportSchema.parse(JSON.parse(printed.toString()));
}

describe("the layers", () => {
  const { summary } = judge("test/architecture/violations");

  it.each(summary.ruleSetUsed.forbidden)("$name fires at the file that breaks it", ({ name }) => {
    const files = summary.violations.filter(({ rule }) => rule.name === name).map(({ from }) => basename(from, ".ts"));
    // A circle is told at one of its files.
    expect(files.filter((file) => file.startsWith(name))).not.toEqual([]);
  });

  it("are kept in the real tree", () => {
    const real = judge(".");
    expect(real.modules.length).toBeGreaterThan(50);
    expect(real.summary.violations).toEqual([]);
  });
});
