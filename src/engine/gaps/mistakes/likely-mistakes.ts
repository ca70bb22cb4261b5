import type { CallDocument, Tester } from "../../pattern";
import { chooseSwatch } from "../../prediction";
import { isCounted } from "../counted-readings";
import type { Outlier } from "../gaps-output";
import type { TesterMistakes } from "./tester-mistakes";

/** From this chance on a number is listed among those to check; it is as likely a mistake as not. */
const LISTED_CHANCE = 0.5;

export function isLikelyMistake(chance: number | null): chance is number {
  return chance !== null && chance >= LISTED_CHANCE;
}

/**
 * The outliers that were found before the fit, with the chance that each is a mistake, and what the fit found besides.
 *
 * @param call screened.
 * @param mistakes by tester id.
 * @returns tester by tester in the call's order.
 * @see docs/method.md#mistakes.
 */
export function likelyMistakes(
  call: CallDocument,
  outliers: readonly Outlier[],
  mistakes: ReadonlyMap<string, TesterMistakes>,
): Outlier[] {
  const known = new Map<string, Outlier[]>();
  for (const outlier of outliers) known.set(outlier.tester, [...(known.get(outlier.tester) ?? []), outlier]);
  return call.testers.flatMap((tester) => {
    const found = mistakes.get(tester.id);
    const own = known.get(tester.id) ?? [];
    if (found === undefined) return own;
    const listed = new Set(own.map(keyOf));
    const more = [...likelyReadings(tester, found), ...likelySwatches(tester, found)];
    return [
      ...own.map((outlier) => withChance(outlier, found)),
      ...more.filter((outlier) => !listed.has(keyOf(outlier))),
    ];
  });
}

function keyOf({ what, id, value }: Outlier): string {
  return `${what} ${id} ${value}`;
}

function withChance(outlier: Outlier, { readings, swatches }: TesterMistakes): Outlier {
  if (outlier.setAside || outlier.what === "yarn") return outlier;
  const chance =
    outlier.what === "reading"
      ? readings.find(({ measurement, cm }) => measurement === outlier.id && cm === outlier.value)?.chance
      : swatches.get(outlier.id);
  return chance === undefined ? outlier : { ...outlier, chance };
}

function likelyReadings(tester: Tester, { readings }: TesterMistakes): Outlier[] {
  return tester.readings.flatMap((reading) => {
    const sent = readings.find(({ measurement, cm }) => measurement === reading.measurement && cm === reading.cm);
    const chance = sent?.chance ?? 0;
    if (!isLikelyMistake(chance) || !isCounted(tester, reading) || reading.decision === "keep") return [];
    return [found(tester, { what: "reading", id: reading.measurement, value: reading.cm, chance })];
  });
}

function likelySwatches(tester: Tester, { swatches }: TesterMistakes): Outlier[] {
  return [...swatches].flatMap(([fabric, chance]) => {
    const swatch = chooseSwatch(tester.swatches, fabric);
    if (!isLikelyMistake(chance) || swatch === undefined || swatch.decision === "keep") return [];
    return [found(tester, { what: "swatch", id: fabric, value: swatch.stitches, chance })];
  });
}

function found(tester: Tester, outlier: Pick<Outlier, "what" | "id" | "value" | "chance">): Outlier {
  return { tester: tester.id, ...outlier, slip: null, wouldBe: null, setAside: false };
}
