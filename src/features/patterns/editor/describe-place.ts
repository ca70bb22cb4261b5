import type { DraftPattern } from "@/engine/editing";

type Named = { readonly id?: string; readonly label?: string; readonly letter?: string };

/** Which of the pattern's parts a path of the draft lies in, by its label: `Body, M` of the grading, `Neck edging` of a list; empty where it has no name. */
export function describePlace(pattern: DraftPattern, path: string): string {
  const [, list = "", index = ""] = /^([^.[]+)(?:\[(\d+)\])?/.exec(path) ?? [];
  if (list === "grading") {
    const [, count, size] = path.split(".");
    return [labelOf(pattern.counts, count), labelOf(pattern.sizes, size)].filter((label) => label !== "").join(", ");
  }
  const items = listsOf(pattern)[list];
  return index === "" ? "" : nameOf(items?.[Number(index)]);
}

function listsOf(pattern: DraftPattern): Readonly<Record<string, readonly Named[] | undefined>> {
  const { bodyMeasurements, fabrics, sizes, counts, lengths, allowances, measurements, yarns } = pattern;
  return { bodyMeasurements, fabrics, sizes, counts, lengths, allowances, measurements, yarns };
}

function labelOf(items: readonly Named[], id: string | undefined): string {
  return nameOf(items.find((item) => item.id === id));
}

function nameOf({ label = "", letter = "" }: Named = {}): string {
  return label || letter;
}
