import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { NOWHERE, retiredWords } from "../retired-words";

function filesOf(folders: readonly string[], extension: RegExp): string[] {
  return folders
    .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: "utf8" }).map((file) => join(folder, file)))
    .filter(
      (file) =>
        extension.test(file) && !/^src\/generated|(plain-words\.test|retired-words)\.ts$|prisma\/migrations/.test(file),
    )
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

  it("speak of people as they, in code and documents too", { timeout: 60_000 }, () => {
    const found = ALL.flatMap((file) =>
      readFileSync(file, "utf8")
        .split("\n")
        .flatMap((line, index) => (NOWHERE.test(line) ? [`${file}:${index + 1} ${line.trim()}`] : [])),
    );
    expect(found).toEqual([]);
  });

  it("stand on every screen and in every message", { timeout: 60_000 }, () => {
    const found = SCREENS.flatMap((file) =>
      textsOf(file, readFileSync(file, "utf8")).flatMap(({ line, text }) =>
        retiredWords(text).map((retired) => `${file}:${line} ${retired}`),
      ),
    );
    expect(found).toEqual([]);
  });
});
