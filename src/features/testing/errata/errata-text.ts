import { csvText } from "@/server/csv";
import { dayText } from "@/ui/day";
import type { Erratum } from "./errata-data";

/** `all sizes`, `size M`, `sizes M, L`. */
export function sizesOf(sizes: readonly string[]): string {
  if (sizes.length === 0) return "all sizes";
  return `${sizes.length === 1 ? "size" : "sizes"} ${sizes.join(", ")}`;
}

/** Errata as text, to copy to where the pattern is sold. */
export function errataText(patternName: string, errata: readonly Erratum[]): string {
  const entries = errata.map(({ version, publishedAt, sizes, text, numbers, rightIn }) =>
    [
      `Version ${version}, ${dayText(publishedAt)}, ${sizesOf(sizes)}`,
      text,
      ...numbers.map(({ what, size, was, becomes }) => `${what}, ${size}: ${becomes} (not ${was})`),
      ...(rightIn === null ? [] : [`Right since version ${rightIn}.`]),
    ].join("\n"),
  );
  return [`Errata for ${patternName}`, ...entries].join("\n\n");
}

/** Errata as CSV: a row for each number, and one for an erratum without numbers. */
export function errataCsv(errata: readonly Erratum[]): string {
  return csvText(errata.flatMap(csvRows));
}

function csvRows({ version, publishedAt, sizes, text, numbers, rightIn }: Erratum): Record<string, string | number>[] {
  const about = { version, date: publishedAt.toISOString().slice(0, 10), sizes: sizesOf(sizes) };
  const rest = { correction: text, "right since version": rightIn ?? "" };
  if (numbers.length === 0) return [{ ...about, count: "", size: "", old: "", new: "", ...rest }];
  return numbers.map(({ what, size, was, becomes }) => ({
    ...{ ...about, count: what, size, old: was, new: becomes, ...rest },
  }));
}
