import type { RulerMark } from "@/engine/places";
import type { Crowd, PersonMark, StoredSize } from "./stored-board";

/** More people than this are drawn as bars, not one by one. */
export const MANY = 60;

/** Parts that the ruler is divided into. */
export const BINS = 60;

/** The range of bodies within a size's reach, cm. */
export function reachOf({ bodyCm, halfBelowCm, halfAboveCm }: Omit<RulerMark, "measurement">): {
  readonly fromCm: number;
  readonly toCm: number;
} {
  return { fromCm: bodyCm - 2 * halfBelowCm, toCm: bodyCm + 2 * halfAboveCm };
}

interface CrowdPerson {
  readonly cm: number;
  readonly mark: PersonMark;
  /** Null for those who wait. */
  readonly size: string | null;
}

/**
 * How many people are in each part of a ruler.
 *
 * @param marks of the sizes drawn on it.
 */
export function crowdOf(people: readonly CrowdPerson[], marks: readonly Omit<RulerMark, "measurement">[]): Crowd {
  const reaches = marks.map(reachOf);
  // Whole centimetres, so that the ends reveal nobody's measurement.
  const fromCm = Math.floor(least([...reaches.map((reach) => reach.fromCm), ...people.map(({ cm }) => cm)]));
  const toCm = Math.max(
    fromCm + 1,
    Math.ceil(-least([...reaches.map((reach) => -reach.toCm), ...people.map(({ cm }) => -cm)])),
  );
  const bins = new Map<number, Map<string, Crowd["bins"][number]["groups"][number]>>();
  for (const { cm, mark, size } of people) {
    const bin = Math.min(BINS - 1, Math.floor((BINS * (cm - fromCm)) / (toCm - fromCm)));
    const groups = bins.get(bin) ?? new Map<string, Crowd["bins"][number]["groups"][number]>();
    const key = `${mark} ${size}`;
    groups.set(key, { mark, size, many: (groups.get(key)?.many ?? 0) + 1 });
    bins.set(bin, groups);
  }
  return {
    ...{ fromCm, toCm },
    bins: [...bins]
      .toSorted(([one], [other]) => one - other)
      .map(([bin, groups]) => ({ bin, groups: [...groups.values()] })),
  };
}

/** 0 where there is none. */
function least(lengthsCm: readonly number[]): number {
  return lengthsCm.reduce((found, cm, index) => (index === 0 ? cm : Math.min(found, cm)), 0);
}

/** A size without spots and people is left off the ruler. */
export function isDrawn({ wanted, invited, placed }: Pick<StoredSize, "wanted" | "invited" | "placed">): boolean {
  return wanted > 0 || invited + placed > 0;
}
