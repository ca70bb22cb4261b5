import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";
import { answerMeasurements, answerReports, parseMeasurementsInput, parseReportsInput } from "@/engine/tables";
import { readJson } from "@/engine/pattern";

const CORPUS = "test/engine/tables/corpus";
const EXPECTED = "\n=== expected\n";

const lengths = z.record(z.string(), z.array(z.number().nullable()));
const texts = z.record(z.string(), z.string());
const numbers = z.record(z.string(), z.number());

const measurementsSchema = z.strictObject({
  kind: z.literal("measurements"),
  unit: z.enum(["cm", "in"]),
  sizes: z.array(z.string()),
  finished: lengths,
  body: lengths.default({}),
  stitches: lengths.default({}),
  rows: lengths.default({}),
  /** By finished measurement, the count that it is worked in. */
  match: texts.default({}),
  gauge: z.array(z.string()).optional(),
  unread: z.array(z.string()).default([]),
});

const testerSchema = z.strictObject({
  name: z.string().nullable(),
  size: z.string().nullable(),
  readings: numbers.default({}),
  swatch: z
    .strictObject({
      fabric: z.string(),
      stitches: z.number().nullable(),
      rows: z.number().nullable(),
      overCm: z.number(),
      toolMm: z.number().optional(),
    })
    .optional(),
  worked: numbers.default({}),
  yarn: numbers.default({}),
  fit: numbers.default({}),
  hours: z.number().optional(),
  comment: z.array(z.string()).default([]),
});

const reportsSchema = z.strictObject({
  kind: z.literal("reports"),
  pattern: z.string(),
  testers: z.array(testerSchema),
  unread: z.array(z.string()).default([]),
});

const expectedSchema = z.discriminatedUnion("kind", [measurementsSchema, reportsSchema]);
type ExpectedMeasurements = z.infer<typeof measurementsSchema>;
type ExpectedReports = z.infer<typeof reportsSchema>;

/** What one cell means: where it belongs, and its number or words. */
type Meanings = ReadonlyMap<string, string | number>;

export interface TableScore {
  readonly name: string;
  readonly right: number;
  /** Cells that are expected, and those that are read though nothing is. */
  readonly cells: number;
  readonly wrong: readonly string[];
}

/** Reads each table of a part of the corpus as the headless verbs do, and compares cell by cell. @param part its folder. */
export function scoreCorpus(part: string): TableScore[] {
  const files = readdirSync(`${CORPUS}/${part}`).toSorted();
  return files.map((file) => scoreTable(file.replace(/\.txt$/, ""), readFileSync(`${CORPUS}/${part}/${file}`, "utf8")));
}

function scoreTable(name: string, content: string): TableScore {
  const [text = "", json = ""] = content.split(EXPECTED);
  const expected = expectedSchema.parse(JSON.parse(json));
  const [wanted, read] =
    expected.kind === "measurements"
      ? [wantedOfMeasurements(expected), readOfMeasurements(text)]
      : [wantedOfReports(expected), readOfReports(text, expected)];
  const keys = new Set([...wanted.keys(), ...read.keys()]);
  const wrong = [...keys].filter((key) => !isSame(wanted.get(key), read.get(key)));
  return {
    name,
    right: keys.size - wrong.length,
    cells: keys.size,
    wrong: wrong.map((key) => `${key}: ${wanted.get(key) ?? "nothing"} was read as ${read.get(key) ?? "nothing"}`),
  };
}

const CM_ERROR = 0.01;

function isSame(wanted: string | number | undefined, read: string | number | undefined): boolean {
  if (typeof wanted === "number" && typeof read === "number") return Math.abs(wanted - read) <= CM_ERROR;
  return wanted === read;
}

function wantedOfMeasurements(expected: ExpectedMeasurements): Meanings {
  const { finished, body, stitches, rows, sizes, match, gauge = [], unread } = expected;
  return new Map<string, string | number>([
    ...Object.entries({ finished, body, stitches, rows }).flatMap(([kind, lists]) =>
      Object.entries(lists).flatMap(([label, values]) => cellsOf(`${kind} ${label}`, values)),
    ),
    ...sizes.map((size, index) => [`size ${index + 1}`, size] as const),
    ...Object.entries(match).map(([label, count]) => [`worked in ${label}`, count] as const),
    ...gauge.map((text, index) => [`gauge ${index + 1}`, text] as const),
    ...unread.map((text) => [`unread ${text}`, text] as const),
  ]);
}

function cellsOf(name: string, values: readonly (number | null)[]): (readonly [string, number])[] {
  return values.flatMap((value, index) => (value === null ? [] : [[`${name}, size ${index + 1}`, value] as const]));
}

function readOfMeasurements(text: string): Meanings {
  const parsed = parseMeasurementsInput({ text });
  if (!parsed.ok) return new Map();
  const { sizes, rows, bodies, counts, gauge, unread } = answerMeasurements(parsed.document);
  return new Map<string, string | number>([
    ...rows.flatMap(({ label, cm }) => cellsOf(`finished ${label}`, cm)),
    ...bodies.flatMap(({ label, cm }) => cellsOf(`body ${label}`, cm)),
    ...counts.flatMap(({ label, direction, values }) => cellsOf(`${direction} ${label}`, values)),
    ...sizes.map((size, index) => [`size ${index + 1}`, size] as const),
    ...rows.flatMap(({ label, count }) => (count === null ? [] : [[`worked in ${label}`, count] as const])),
    ...(gauge === null
      ? []
      : [gauge.stitches, gauge.rows, gauge.over].map((one, at) => [`gauge ${at + 1}`, one] as const)),
    ...unread.map((cell) => [`unread ${cell.text}`, cell.text] as const),
  ]);
}

function wantedOfReports({ testers, unread }: ExpectedReports): Meanings {
  return new Map<string, string | number>([
    ...testers.flatMap(({ name, size, readings, swatch, worked, yarn, fit, hours, comment }, index) =>
      testerCells(index, {
        ...{ name, size, hours },
        ...{ readings, worked, yarn, fit },
        swatch: swatch && { ...swatch, fabric: swatch.fabric },
        comment,
      }),
    ),
    ...unread.map((text) => [`unread ${text}`, text] as const),
  ]);
}

interface TesterCells {
  readonly name: string | null;
  readonly size: string | null;
  readonly hours: number | undefined;
  readonly readings: Readonly<Record<string, number>>;
  readonly worked: Readonly<Record<string, number>>;
  readonly yarn: Readonly<Record<string, number>>;
  readonly fit: Readonly<Record<string, number>>;
  readonly swatch: Readonly<Record<string, string | number | null | undefined>> | undefined;
  readonly comment: readonly string[];
}

function testerCells(
  index: number,
  { name, size, hours, swatch, comment, ...byId }: TesterCells,
): [string, string | number][] {
  const at = `tester ${index + 1}`;
  const told = Object.entries({ name, size, hours, ...Object.fromEntries(entriesOf("swatch", swatch ?? {})) });
  return [
    ...told.flatMap(([key, value]): [string, string | number][] => (value == null ? [] : [[`${at} ${key}`, value]])),
    ...Object.entries(byId).flatMap(([kind, values]) =>
      Object.entries(values).map(([id, value]): [string, number] => [`${at} ${kind} ${id}`, value]),
    ),
    ...comment.map((text): [string, string] => [`${at} says ${text}`, text]),
  ];
}

function entriesOf<Value>(name: string, record: Readonly<Record<string, Value>>): [string, Value][] {
  return Object.entries(record).map(([key, value]) => [`${name} ${key}`, value]);
}

/** A tool counts where the table tells one; of comments each answer that is expected. */
function readOfReports(text: string, { pattern, testers: wanted }: ExpectedReports): Meanings {
  const json = readJson(readFileSync(`${CORPUS}/pattern-${pattern}.json`, "utf8"));
  const parsed = parseReportsInput({ text, pattern: json.ok ? json.value : null });
  if (!parsed.ok) throw new Error(parsed.faults.map(({ path, says }) => `${path}: ${says}`).join("\n"));
  const { testers, unread } = answerReports(parsed.document);
  return new Map<string, string | number>([
    ...testers.flatMap(({ name, size, swatches, readings, worked, yarn, fit, hours, comment = "" }, index) => {
      const [first] = swatches;
      const { toolMm, ...swatch } = first ?? {};
      const asked = wanted[index];
      const lines = comment.split("\n");
      const found = (asked?.comment ?? []).filter((said) => comment.includes(said));
      const other = lines.filter((line) => line !== "" && !found.some((said) => line.includes(said)));
      return testerCells(index, {
        ...{ name, size, hours, worked },
        readings: Object.fromEntries(readings.map(({ measurement, cm }) => [measurement, cm])),
        yarn: Object.fromEntries(yarn.map((used) => [used.yarn, used.grams])),
        fit: Object.fromEntries(fit.map(({ area, scale }) => [area, scale])),
        swatch: { ...swatch, ...(asked?.swatch?.toolMm === undefined ? {} : { toolMm }) },
        comment: [...found, ...other],
      });
    }),
    ...unread.map((cell) => [`unread ${cell.text}`, cell.text] as const),
  ]);
}
