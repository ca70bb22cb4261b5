import type { Suspect } from "@/engine/gaps";
import { formatYarnNumber, type YarnUnit } from "@/ui/format-yarn-length";
import { slipName } from "./slip-words";
import type { YarnBoard, YarnSheet } from "./yarn-board";

/** What to publish of a yarn, in one sentence. */
export function publishSentence({ rows }: YarnSheet, unit: YarnUnit): string {
  const told = rows.filter(({ publishMetres }) => publishMetres !== null);
  const [first, last] = [told[0], told.at(-1)];
  if (first === undefined || last === undefined) return "";
  const amount = (metres: number | null) => `${formatYarnNumber(metres ?? 0, unit)} ${unit}`;
  if (told.length === 1) return `Publish ${amount(first.publishMetres)} in ${first.size.label}.`;
  return `Publish from ${amount(first.publishMetres)} in ${first.size.label} to ${amount(last.publishMetres)} in ${last.size.label}.`;
}

/** Of which sizes no tester reported, in one sentence; null where all are tested. */
export function untestedSentence({ rows }: YarnSheet): string | null {
  const untested = rows.filter(({ reports, publishMetres }) => reports === 0 && publishMetres !== null);
  if (untested.length === 0) return null;
  const sizes = untested.map(({ size }) => size.label).join(", ");
  return `Nobody has weighed it in ${sizes}: reckoned from the other sizes.`;
}

/** Why nothing can be said of a yarn. */
export function emptyYarn({ state }: YarnSheet): string {
  return state === "no pieces"
    ? "No piece of the pattern takes this yarn, so its stitches cannot be counted. Add the pieces, with their stitches and rows, and the yarn of every size can be reckoned."
    : "No tester has weighed this yarn yet. One report is enough for a first estimate of every size; three or more make it good.";
}

/** A weight that no other tester comes near: `Alva’s 6.7 g looks like ounces written down as grams; it would be 190 g.` */
export function yarnSuspectWords({ tester, value, slip, wouldBe, setAside }: Suspect, { names }: YarnBoard): string {
  const whose = `${names.get(tester) ?? tester}: ${grams(value)}`;
  const looks =
    slip === null
      ? "is far from what the others used; no common slip explains it"
      : `looks like ${slipName(slip)}${wouldBe === null ? "" : `; it would be ${grams(wouldBe)}`}`;
  return `${whose} ${looks}. ${setAside ? "It does not count." : "It counts."}`;
}

function grams(value: number): string {
  return `${Number(value.toFixed(value < 10 ? 1 : 0))} g`;
}
