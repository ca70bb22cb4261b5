import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { gaps, gapsOutputSchema } from "@/engine/gaps";
import { outlineGarment, parseOutlineInput } from "@/engine/garment";
import { parseGradeRequest } from "@/engine/grading";
import {
  applicantsSchema,
  callSchema,
  parseApplicants,
  parseCall,
  parsePattern,
  patternDocument1Schema,
  patternDocumentSchema,
  PLAUSIBLE,
} from "@/engine/pattern";
import { parsePlacesRequest } from "@/engine/places";
import { parsePredictInput } from "@/engine/prediction";
import { parseReviseRequest } from "@/engine/revision";
import { parseMeasurementsInput, parseReportsInput } from "@/engine/tables";

const PAGE = readFileSync("docs/documents.md", "utf8");

/** Examples by the word behind ```json, as text. */
const EXAMPLES: ReadonlyMap<string, string> = new Map(
  [...PAGE.matchAll(/^```json ([\w-]+)\n(.*?)^```$/gms)].map(([, name = "", text = ""]) => [name, text]),
);

/** The example, with the documents above it in the place of their words. */
function example(name: string): unknown {
  const text = EXAMPLES.get(name);
  if (text === undefined) throw new Error(`docs/documents.md has no example “${name}”`);
  return JSON.parse(text, (_key, value: unknown) => {
    if (value === "PATTERN") return example("pattern");
    if (value === "PATTERN2") return example("pattern2");
    if (value === "APPLICANTS") return example("applicants");
    return value === "CALL" ? example("call") : value;
  });
}

/** What stands between a heading and the next, without examples. */
function section(heading: string): string {
  const [, level = "", text = ""] = new RegExp(`^(##+) ${heading}\\n(.*?)(?=^##? |(?![^]))`, "ms").exec(PAGE) ?? [];
  expect(level, `a heading “${heading}”`).not.toBe("");
  return text.replace(/^```.*?^```$/gms, "");
}

/** Every key of a JSON Schema's objects, however deep. */
function keysOf(schema: unknown): Set<string> {
  const keys = new Set<string>();
  const open: unknown[] = [schema];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (typeof next !== "object" || next === null) continue;
    if ("properties" in next) for (const key of Object.keys(next.properties ?? {})) keys.add(key);
    open.push(...Object.values(next));
  }
  return keys;
}

const VERBS_OF_TABLES = ["read-measurements", "read-reports"];

describe("docs/documents.md", () => {
  it.each([
    ["pattern", parsePattern],
    ["call", parseCall],
    ["applicants", parseApplicants],
    ["predict", parsePredictInput],
    ["grade", parseGradeRequest],
    ["places", parsePlacesRequest],
    ["revise", parseReviseRequest],
    ["read-measurements", parseMeasurementsInput],
    ["read-reports", parseReportsInput],
    ["outline", parseOutlineInput],
  ])("has an example of %s that is valid", (name, parse) => {
    const parsed = parse(example(name));
    expect(parsed.ok ? [] : parsed.faults).toEqual([]);
  });

  it("has no example that no test reads", () => {
    const documents = ["pattern", "pattern2", "call", "applicants"];
    expect([...EXAMPLES.keys()]).toEqual([
      ...documents,
      "predict",
      "grade",
      "places",
      "revise",
      ...VERBS_OF_TABLES,
      "outline",
    ]);
    expect(PAGE.match(/^ *```json/gm)).toHaveLength(EXAMPLES.size);
  });

  it("has an example of a call whose differences can be computed", () => {
    const call = parseCall(example("call"));
    if (!call.ok) throw new Error("faulty");
    expect(gapsOutputSchema.safeParse(gaps(call.document)).success).toBe(true);
  });

  it("has an example of a garment that can be worked in every size", () => {
    const input = parseOutlineInput(example("outline"));
    if (!input.ok) throw new Error("faulty");
    const { pattern } = input.document;
    expect(pattern.sizes.flatMap(({ id }) => outlineGarment(pattern, id).faults)).toEqual([]);
  });

  it.each([
    ["Pattern", patternDocument1Schema],
    ["Garment", patternDocumentSchema.pick({ garment: true, sampleSize: true, origin: true })],
    ["Call", callSchema.omit({ pattern: true, calls: true })],
    ["Applicants", applicantsSchema.omit({ pattern: true })],
    ["gaps", gapsOutputSchema],
  ])("describes every field of “%s”", (heading, schema) => {
    const text = section(heading);
    const fields = [...keysOf(z.toJSONSchema(schema, { io: "input", unrepresentable: "any" }))];
    expect(fields.length).toBeGreaterThan(5);
    expect(fields.filter((field) => !new RegExp(`\`[^\`]*\\b${field}\\b[^\`]*\``).test(text))).toEqual([]);
  });

  it("has every range, as the engine checks it", () => {
    const rows = [...section("Ranges").matchAll(/^\| `(\w+)` +\| ([−\d. ]+?) +\| ([−\d. ]+?) +\|/gm)];
    const number = (text: string) => Number(text.replaceAll(" ", "").replace("−", "-"));
    const stated = rows.map(([, name = "", from = "", to = ""]) => [name, number(from), number(to)]);
    expect(stated).toEqual(Object.entries(PLAUSIBLE).map(([name, { min, max }]) => [name, min, max]));
  });
});
