import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, extname, join, normalize } from "node:path";
import { describe, expect, it } from "vitest";

const CODE_FOLDERS = ["src", "test", "e2e", "prisma"];
const CODE_ENDINGS = new Set([".ts", ".tsx", ".sql", ".prisma"]);
const GENERATED = "src/generated";
/** Its own examples of what is wrong would be found. */
const THIS_FILE = "test/architecture/documentation.test.ts";

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile());
}

const CODE_FILES = CODE_FOLDERS.flatMap(filesBelow).filter(
  (path) => CODE_ENDINGS.has(extname(path)) && !path.startsWith(GENERATED) && path !== THIS_FILE,
);
const PAGES = ["README.md", "DEVELOPERS.md", ...filesBelow("docs").filter((path) => path.endsWith(".md"))];

/** A heading's anchor as GitHub makes it: small letters, no punctuation, hyphens for spaces. */
function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, "")
    .replaceAll(" ", "-");
}

/** Code blocks hold no headings and no links. */
function withoutCode(markdown: string): string {
  return markdown.replace(/^( *)```.*?^\1```$/gms, "").replace(/`[^`\n]*`/g, "`code`");
}

function anchorsIn(markdown: string): Set<string> {
  const headings = markdown.replace(/^( *)```.*?^\1```$/gms, "").matchAll(/^#{1,6} (.+)$/gm);
  return new Set([...headings].map(([, heading = ""]) => anchorOf(heading.replaceAll("`", ""))));
}

/** What does not resolve of `path#anchor`; null where all of it does. */
function brokenPart(reference: string): string | null {
  const [path = "", anchor] = reference.split("#");
  if (!existsSync(path)) return `there is no ${path}`;
  if (anchor === undefined) return null;
  if (!path.endsWith(".md")) return `${path} has no headings`;
  return anchorsIn(readFileSync(path, "utf8")).has(anchor) ? null : `${path} has no heading #${anchor}`;
}

/** References to pages below docs/, wherever they stand in a comment or a text. */
function docsReferences(text: string): string[] {
  return [...text.matchAll(/\bdocs\/[\w/-]+\.md(?:#[\w-]+)?/g)].map(([reference]) => reference);
}

/** Where the relative links of a page lead, from the repository's root. */
function linksOf(page: string, markdown: string): string[] {
  return [...withoutCode(markdown).matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target = ""]) => target)
    .filter((target) => !/^[a-z]+:/.test(target))
    .map((target) => (target.startsWith("#") ? `${page}${target}` : normalize(join(dirname(page), target))));
}

/** The source that each `@see` names, without the comment's marks. */
function sourcesNamed(code: string): string[] {
  return [...code.matchAll(/@see\b([^\n]*)/g)].map(([, source = ""]) => source.replace(/\*\/.*/, "").trim());
}

function broken(references: readonly string[]): string[] {
  return references.flatMap((reference) => brokenPart(reference) ?? []);
}

describe("references from code to the documentation", () => {
  it.each(["docs/method.md#no-such-heading", "docs/no-such-page.md", "docs/no-such-page.md#causes"])(
    "%s is found to be broken",
    (reference) => {
      expect(broken(docsReferences(`/** @see ${reference}. */`))).toHaveLength(1);
    },
  );

  it("lead to a page and a heading that exist", () => {
    const found = CODE_FILES.map((path) => ({ path, references: docsReferences(readFileSync(path, "utf8")) }));
    expect(found.flatMap(({ references }) => references).length).toBeGreaterThan(80);
    const faults = found.flatMap(({ path, references }) => broken(references).map((fault) => `${path}: ${fault}`));
    expect(faults).toEqual([]);
  });

  it("name a source behind every @see", () => {
    expect(sourcesNamed("/** @see */\n * @see\n * @see ISO 5725-2:1994, 7.4.")).toEqual([
      "",
      "",
      "ISO 5725-2:1994, 7.4.",
    ]);
    const unnamed = CODE_FILES.filter((path) => sourcesNamed(readFileSync(path, "utf8")).includes(""));
    expect(unnamed).toEqual([]);
  });

  it("cite no design that stands outside the repository", () => {
    const outside =
      /\bdesign (?:\d|section)|(?<![\w/-])(?:design|documents|references|house|words|style|stack)\.md\b|\bshared\/[\w-]+/;
    expect(outside.test("@see design 4.7.")).toBe(true);
    expect(outside.test("(shared/references.md, section 3)")).toBe(true);
    expect(outside.test("@see docs/documents.md#call")).toBe(false);
    expect(CODE_FILES.filter((path) => outside.test(readFileSync(path, "utf8")))).toEqual([]);
  });
});

describe("links of the documentation", () => {
  it("are found to be broken where the file or the heading is missing", () => {
    const page = "[a](../src/no-such-file.ts) [b](method.md#no-such-heading) [c](#verbs) [d](https://example.org)";
    expect(broken(linksOf("docs/documents.md", page))).toEqual([
      "there is no src/no-such-file.ts",
      "docs/method.md has no heading #no-such-heading",
    ]);
  });

  it.each(PAGES)("of %s lead to what exists", (page) => {
    expect(broken(linksOf(page, readFileSync(page, "utf8")))).toEqual([]);
  });

  it("reach every decision from DEVELOPERS.md", () => {
    const linked = new Set(linksOf("DEVELOPERS.md", readFileSync("DEVELOPERS.md", "utf8")));
    const decisions = filesBelow("docs/decisions");
    expect(decisions.length).toBeGreaterThan(0);
    expect(decisions.filter((path) => !linked.has(path)).map((path) => basename(path))).toEqual([]);
  });
});

describe("constants in docs/method.md", () => {
  const page = readFileSync("docs/method.md", "utf8");
  const code = ["src/engine", "src/solver"]
    .flatMap(filesBelow)
    .map((path) => readFileSync(path, "utf8"))
    .join("\n");

  it("are all named as in the code", () => {
    const names = new Set([...page.matchAll(/`([A-Z][A-Z_0-9]{2,})`/g)].map(([, name = ""]) => name));
    expect(names.size).toBeGreaterThan(60);
    expect([...names].filter((name) => !new RegExp(`\\b${name}\\b`).test(code))).toEqual([]);
  });

  /** In a row of a table behind the name, or as `NAME` = 3, `NAME` is 3. */
  const stated = [
    ...page.matchAll(/^\| `([A-Z][A-Z_0-9]+)` +\| ([\d.]+) +\|/gm),
    ...page.matchAll(/`([A-Z][A-Z_0-9]+)` (?:=|is) (\d[\d.]*(?<!\.))(?![⁻\d])/g),
  ].map(([, name = "", value = ""]) => ({ name, value: Number(value) }));

  it("are found", () => {
    expect(stated.length).toBeGreaterThan(40);
  });

  it.each(stated)("$name is $value in the code", ({ name, value }) => {
    const values = [...code.matchAll(new RegExp(`\\b${name} = ([\\d._/e -]+);`, "g"))].map(([, text = ""]) => {
      const [over = "", under = "1"] = text.replaceAll("_", "").split("/");
      return Number(over) / Number(under);
    });
    expect(values).toContain(value);
  });
});
