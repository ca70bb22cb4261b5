import { canonicalJson, type FlatTerm, type Measurement, type PatternDocument, type Term } from "@/engine/pattern";

/** How a measurement was and is calculated, a line per term. */
export interface TermChange {
  readonly key: string;
  readonly label: string;
  readonly was: string;
  readonly becomes: string;
}

/** The measurements that are calculated differently, including new and removed ones. */
export function termChanges(before: PatternDocument, after: PatternDocument): TermChange[] {
  const olds = new Map(before.measurements.map((measurement) => [measurement.id, measurement]));
  const news = new Map(after.measurements.map((measurement) => [measurement.id, measurement]));
  return [...new Set([...news.keys(), ...olds.keys()])].flatMap((key) => {
    const [was, becomes] = [olds.get(key), news.get(key)];
    const named = becomes ?? was;
    if (named === undefined || canonicalJson(was?.terms ?? null) === canonicalJson(becomes?.terms ?? null)) return [];
    const label = `${named.letter} ${named.label}`;
    return [{ key, label, was: termLines(before, was), becomes: termLines(after, becomes) }];
  });
}

function termLines(pattern: PatternDocument, measurement: Measurement | undefined): string {
  return (measurement?.terms ?? []).map((term) => termLine(pattern, term)).join("\n");
}

/** `2 × Body stitches in Lace`, `less Overlap`, `the diagonal of … across and … along`. */
function termLine(pattern: PatternDocument, term: Term): string {
  if (!("diagonal" in term)) return flatLine(pattern, term);
  const side = (flats: readonly FlatTerm[]) => flats.map((flat) => flatLine(pattern, flat)).join(" and ") || "nothing";
  return `${timesWords(term.times)}the diagonal of (${side(term.diagonal.across)}) across and (${side(term.diagonal.along)}) along`;
}

function flatLine(pattern: PatternDocument, term: FlatTerm): string {
  const times = timesWords(term.times);
  if ("length" in term) return `${times}${labelOf(pattern.lengths ?? [], term.length)}, worked to a length`;
  if ("allowance" in term) return `${times}${labelOf(pattern.allowances, term.allowance)}, what it adds or takes`;
  const count = pattern.counts.find(({ id }) => id === term.count);
  if (count === undefined) return `${times}${term.count}`;
  const fabric = labelOf(pattern.fabrics, count.fabric);
  return `${times}${count.label} in ${fabric}${term.stretched ? ", as stretched when worn" : ""}`;
}

function timesWords(times: number): string {
  const size = Math.abs(times);
  return `${times < 0 ? "less " : ""}${size === 1 ? "" : `${Number(size.toFixed(4))} × `}`;
}

function labelOf(parts: readonly { readonly id: string; readonly label: string }[], id: string): string {
  return parts.find((named) => named.id === id)?.label ?? id;
}
