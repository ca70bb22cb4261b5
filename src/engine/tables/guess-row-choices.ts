import { cellAt, type Cells } from "./cells";
import type { Layout } from "./guess-layout";
import type { RowChoice, RowKind } from "./measurement-choices";
import { looksNumeric } from "./read-cell";
import { labelOfRow } from "./row-label";
import { shareOfWords, distinctiveWords, unitNamed } from "./label-text";

const BODY =
  /\bto fit\b|\bfits?\b|\bbody (?:bust|chest|hips?|waist|measure\w*|size)|\bactual (?:bust|chest)\b|\byour (?:bust|chest|body)|\bwearer/i;
const STITCHES = /\bst(?:s|itch(?:es)?)?\b|\bcast[ -]?on\b|\bfoundation chains?\b|\bchains?\b/i;
const ROWS = /\b(?:rows?|rounds?|rnds?|ridges?)\b/i;
const NEITHER =
  /\byarn|\byardage|\bmet(?:re|er)s?\b|\bskeins?\b|\bballs?\b|\bgrams?\b|\bease\b|\bhook|\bneedle|\btester|\bgauge|\btension/i;
const FINISHED = /\bfinished\b|\bgarment\b|\bmeasurements?\b/i;
const GIRTH =
  /\baround\b|\bcircumference|\bgirth|\bbust\b|\bchest\b|\bhips?\b|\bwaist\b|\bhem\b|\bupper arm|\bbiceps?\b|\bwrist|\bcuff|\bround\b|\bneck opening/i;
const NO_GIRTH = /\bdepth\b|\blength\b|\bheight\b|\bdrop\b|\bfrom\b|\bwidth\b|\bacross\b|\blong\b/i;
const ALONG = /\bdepth\b|\bheight\b|\bdrop\b/i;
const WORKED_TO_LENGTH = /\blength\b|\blong\b/i;

/**
 * What each row of a table holds, guessed from its words, from the heading above it and from what stands near.
 *
 * @param view the table, turned where its sizes run down.
 * @returns one choice a row, in the table's order.
 */
export function guessRowChoices(view: Cells, layout: Layout): RowChoice[] {
  const labels = view.map((_, row) => labelOfRow(view, layout, row));
  const kinds = guessKinds(view, layout, labels);
  return labels.map((label, row) => {
    const kind = kinds[row] ?? "leave out";
    const countRow = kind === "measurement" ? nearestCountRow({ row, label, labels, kinds }) : null;
    return {
      kind,
      unit: unitNamed(rowHeading(view, layout, row)) ?? "table",
      girth: kind === "measurement" && GIRTH.test(label) && !NO_GIRTH.test(label),
      workedIn: countRow === null ? guessWorkedIn(label) : kinds[countRow] === "rows" ? "rows" : "stitches",
      countRow,
      times: "",
      tolerance: "",
    };
  });
}

function guessKinds(view: Cells, layout: Layout, labels: readonly string[]): RowKind[] {
  let under: RowKind = "measurement";
  return view.map((_, row) => {
    if (row <= layout.headerRow) return "leave out";
    const label = labels[row] ?? "";
    const filled = layout.sizeColumns.filter((column) => looksNumeric(cellAt(view, row, column))).length;
    if (filled === 0) {
      if (label !== "") under = kindOfLabel(label, "measurement");
      return "leave out";
    }
    return kindOfLabel(label, under);
  });
}

function kindOfLabel(label: string, otherwise: RowKind): RowKind {
  if (NEITHER.test(label)) return "leave out";
  if (BODY.test(label)) return "body";
  if (ROWS.test(label)) return "rows";
  if (STITCHES.test(label)) return "stitches";
  if (FINISHED.test(label)) return "measurement";
  return otherwise;
}

function guessWorkedIn(label: string): RowChoice["workedIn"] {
  if (WORKED_TO_LENGTH.test(label)) return "ruler";
  return ALONG.test(label) ? "rows" : "stitches";
}

/** The row with the most words in common; among equals, and where words tell nothing, the one right below. */
function nearestCountRow({
  row,
  label,
  labels,
  kinds,
}: {
  readonly row: number;
  readonly label: string;
  readonly labels: readonly string[];
  readonly kinds: readonly RowKind[];
}): number | null {
  const along = ALONG.test(label) || WORKED_TO_LENGTH.test(label);
  let best: number | null = null;
  let bestScore = 0.5;
  kinds.forEach((kind, index) => {
    if (kind !== "stitches" && kind !== "rows") return;
    const named = labels[index] ?? "";
    const common = Math.max(shareOfWords(named, label), shareOfWords(label, named));
    const below = index === row + 1 && distinctiveWords(named).size === 0 ? 1 : 0;
    const score = common + below + (kind === (along ? "rows" : "stitches") ? 0.2 : 0) - Math.abs(index - row) / 1_000;
    if (common + below > 0 && score > bestScore) [best, bestScore] = [index, score];
  });
  return best;
}

/** Everything in front of a row's numbers, where its unit may stand in a column of its own. */
function rowHeading(view: Cells, { sizeColumns }: Layout, row: number): string {
  const texts = (view[row] ?? []).map((_, column) => (sizeColumns.includes(column) ? "" : cellAt(view, row, column)));
  return texts
    .filter((text) => text !== "")
    .map((text) => (/^in\.?$/i.test(text) ? "inches" : text))
    .join(" ");
}
