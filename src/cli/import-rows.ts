import { scoreCorpus, type TableScore } from "./import-corpus";

/** Of all cells this share is to be read right without a touch. */
const BAR = 0.95;

interface Part {
  readonly folder: string;
  readonly says: string;
  /** Share of its cells that were read right the first time, before the reader was changed because of them. */
  readonly firstShare: number | null;
}

const PARTS: readonly Part[] = [
  { folder: "first", says: "the reader was written with these", firstShare: null },
  { folder: "second", says: "written after it, then learnt from", firstShare: 0.9333 },
  { folder: "third", says: "each with one odd layout, then learnt from", firstShare: 0.5255 },
  { folder: "fourth", says: "written after those, then learnt from", firstShare: 0.6923 },
];

/** Cells of the invented tables that are read right without a correction, as a table. */
export function importTable(): string {
  const parts = PARTS.map((part) => ({ ...part, scores: scoreCorpus(part.folder) }));
  const all = parts.flatMap(({ scores }) => scores);
  const rows = [
    ...parts.map(({ folder, says, firstShare, scores }) => {
      const first = firstShare === null ? "" : `; when it was new ${percent(firstShare)}`;
      return { name: `${folder} part, ${says}${first}`, scores };
    }),
    { name: "all tables of measurements", scores: all.filter(({ name }) => name.startsWith("m")) },
    { name: "all tables of reports", scores: all.filter(({ name }) => name.startsWith("r")) },
    { name: "all tables", scores: all },
  ];
  const width = Math.max(...rows.map(({ name }) => name.length));
  const wrong = all.flatMap((score) => score.wrong.map((line) => `${score.name}: ${line}`));
  return [
    `Cells of ${all.length} invented tables that are read right without a touch; cells that are read and should not be count as wrong.`,
    "How tables that the reader has not learnt from fare is what a part had when it was new.",
    "",
    ...rows.map((row) => rowText(row, width)),
    "",
    ...(wrong.length === 0 ? [] : ["Wrong:", ...wrong, ""]),
  ].join("\n");
}

function rowText({ name, scores }: { readonly name: string; readonly scores: readonly TableScore[] }, width: number) {
  const right = scores.reduce((sum, score) => sum + score.right, 0);
  const cells = scores.reduce((sum, score) => sum + score.cells, 0);
  const share = right / cells;
  return `${name.padEnd(width)}  ${percent(share).padStart(8)} of ${String(cells).padStart(5)}  at least ${BAR * 100} %  ${share >= BAR ? "met" : "missed"}`;
}

function percent(share: number): string {
  return `${(share * 100).toFixed(2)} %`;
}
