import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

/* The words of the screens and of the code. A word is retired when a reader would stop at it; the list stays short and true. */

/** In no file at all: people are they, and what is computed is calculated. */
const NOWHERE = /\b(she|hers?|herself|reckon\w*)\b/i;

/** Not in what people read: a private dialect, each beside what is said instead. */
const NOT_ON_SCREENS: readonly (readonly [retired: RegExp, instead: string])[] = [
  [/\bmend(s|ed|ing)?\b/i, "fix"],
  [/\bslips?\b/i, "possible mistake"],
  [/\bset aside\b/i, "excluded"],
  [/\bwhat is behind it\b/i, "likely causes"],
  [/\bon size\b/i, "as planned"],
  [/\bnot settled yet\b/i, "not enough data yet"],
  [/\bdoubtful\b/i, "possible mistakes"],
  [/(?<![-/.\w])gaps?(?![-/.\w])/i, "differences"],
  [/\bgive places?\b/i, "assign sizes"],
  [/\bbring (a|the) document\b/i, "import file"],
  [/\bas a document\b/i, "export file"],
  [/\bbegin a pattern\b/i, "new pattern"],
  [/\bword of yours\b|\bby your word\b/i, "your decision"],
  [/\bthrow(n|s)? away\b/i, "discard"],
  [/\bput off the end\b/i, "extend deadline"],
  [/\bdrawn roughly\b/i, "sketch, not to scale"],
  [/\bto the last stitch\b|(?<!most )\beven steps\b/i, "closest to target measurements, most even steps"],
  [/\bexchanged\b/i, "swapped"],
  [/\bon purpose otherwise\b|\botherwise on purpose\b/i, "changed on purpose"],
  [/\bfrom memory\b|\bno source\b/i, "nothing: provenance belongs to the method page"],
];

function filesOf(folders: readonly string[], extension: RegExp): string[] {
  return folders
    .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: "utf8" }).map((file) => join(folder, file)))
    .filter((file) => extension.test(file) && !/^src\/generated|plain-words\.test|prisma\/migrations/.test(file))
    .toSorted();
}

const METHOD_PAGE = /\/method-\w+/;
const SCREENS = filesOf(["src/app", "src/features", "src/ui", "src/start"], /\.tsx?$/).filter(
  (file) => !METHOD_PAGE.test(file),
);
const ALL = [
  ...filesOf(["src", "test", "e2e", "prisma", "docs"], /\.(tsx?|css|prisma|md)$/),
  "README.md",
  "DEVELOPERS.md",
];

/** Texts of a file that a person can read: between tags, in strings and in templates; names and addresses are none. */
function textsOf(file: string, source: string): { readonly line: number; readonly text: string }[] {
  const parsed = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const texts: { line: number; text: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    // What a value of a stored document is called.
    if (ts.isStringLiteral(node) && ts.isCaseClause(node.parent)) return;
    if (ts.isJsxAttribute(node) && node.name.getText() === "className") return;
    const isText =
      ts.isJsxText(node) ||
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddleOrTemplateTail(node);
    // A sentence or a label has a blank or begins with a capital; an id, a class or a path is one word in small letters.
    if (isText && /\s\S*[a-z]|^[A-Z]/.test(node.text) && !/^[\w-]*(:|\/|\[|-\d)/.test(node.text.trim()))
      texts.push({ line: parsed.getLineAndCharacterOfPosition(node.getStart()).line + 1, text: node.text.trim() });
    ts.forEachChild(node, visit);
  };
  visit(parsed);
  return texts;
}

describe("plain words", () => {
  it("are found in what people read, and not in names or addresses", () => {
    const source = `const a = <p className="gap-2 gap">Mind the gap</p>; const href = \`/calls/gaps\`; throw new Error("A slip");`;
    expect(textsOf("sample.tsx", source).map(({ text }) => text)).toEqual(["Mind the gap", "A slip"]);
  });

  it("speak of people as they, in code and documents too", () => {
    const found = ALL.flatMap((file) =>
      readFileSync(file, "utf8")
        .split("\n")
        .flatMap((line, index) => (NOWHERE.test(line) ? [`${file}:${index + 1} ${line.trim()}`] : [])),
    );
    expect(found).toEqual([]);
  });

  it("stand on every screen and in every message", () => {
    const found = SCREENS.flatMap((file) =>
      textsOf(file, readFileSync(file, "utf8")).flatMap(({ line, text }) =>
        NOT_ON_SCREENS.flatMap(([retired, instead]) =>
          retired.test(text) ? [`${file}:${line} “${text}”: write ${instead}`] : [],
        ),
      ),
    );
    expect(found).toEqual([]);
  });
});
