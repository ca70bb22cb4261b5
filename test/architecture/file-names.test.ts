import { readdirSync, readFileSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { expect, it } from "vitest";

/** What a file of a feature may be, by the last word of its name. Any other is named after something that it exports. */
const KINDS = new Set([
  "access",
  "actions",
  "board",
  "computed",
  "copy",
  "csv",
  "data",
  "loaders",
  "mutations",
  "schema",
  "state",
  "status",
]);
const EXPORTED = /^export (?:default )?(?:async )?(?:function|const|type|interface|class) (\w+)/gm;

const files = readdirSync("src/features", { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => join("src/features", file));

function isFoundByItsName(file: string): boolean {
  const extension = extname(file);
  const lastWord = basename(file, extension).split("-").at(-1) ?? "";
  if (extension === ".ts" && KINDS.has(lastWord)) return true;
  const exported = [...readFileSync(file, "utf8").matchAll(EXPORTED)].map(([, name = ""]) => name.toLowerCase());
  return exported.some((name) => name.includes(lastWord.replace(/s$/, "")));
}

it("every file of a feature is of a known kind, or named after what it exports", () => {
  expect(files.length).toBeGreaterThan(500);
  expect(files.filter((file) => !isFoundByItsName(file))).toEqual([]);
});
