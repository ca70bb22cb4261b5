import { ownValue, type PatternDocument } from "@/engine/pattern";
import { SHARING_FIELDS } from "./photo-sharing-schema";

/** Names of the fields that occur once in the form. */
export const TEXT_FIELDS = ["introduction", "asks", "yarn", "tools", "gives"] as const;
export const DAY_FIELDS = ["applyUntil", "startOn", "swatchBy", "reportBy"] as const;

/** Names of the fields of the privacy notice, by what they say. */
export const NOTICE_FIELDS = {
  responsible: "noticeResponsible",
  contact: "noticeContact",
  minimumAge: "noticeMinimumAge",
  monthsStored: "noticeMonthsStored",
  more: "noticeMore",
} as const;

/** Names of the fields of a size. */
export const leastField = (sizeId: string) => `least.${sizeId}`;
export const wantedField = (sizeId: string) => `wanted.${sizeId}`;
export const mostField = (sizeId: string) => `most.${sizeId}`;

/** One box in place of the fields of every size: whether it is used, and its three numbers. */
export const SAME_FIELD = "sameForAll";
export const LEAST_OF_ALL = "leastOfAll";
export const WANTED_OF_ALL = "wantedOfAll";
export const MOST_OF_ALL = "mostOfAll";

/** Name of the field that says whether a body measurement is asked for, and whether it decides the size. */
export const bodyField = (bodyId: string) => `body.${bodyId}`;

export interface AskableMeasurement {
  readonly id: string;
  readonly label: string;
  /** How to take it; "" if the pattern does not say. */
  readonly how: string;
  /** Every size has it, so that it can decide the size. */
  readonly decides: boolean;
}

/** Body measurements that a call of this pattern can ask for: those it explains, then the others of its sizes. */
export function askableMeasurements({ bodyMeasurements = [], sizes }: PatternDocument): AskableMeasurement[] {
  const explained = new Map(bodyMeasurements.map((measurement) => [measurement.id, measurement]));
  const ids = new Set([...explained.keys(), ...sizes.flatMap(({ body }) => Object.keys(body))]);
  return [...ids].map((id) => ({
    id,
    label: explained.get(id)?.label ?? id,
    how: explained.get(id)?.how ?? "",
    decides: sizes.every(({ body }) => ownValue(body, id) !== undefined),
  }));
}

/** Names of all fields that the form of this pattern's call has. */
export function fieldNames(pattern: PatternDocument): string[] {
  return [
    ...["title", ...TEXT_FIELDS, "timeZone", ...DAY_FIELDS, "releaseOn", "mostApplications", "agreement"],
    ...SHARING_FIELDS,
    ...Object.values(NOTICE_FIELDS),
    ...pattern.sizes.flatMap(({ id }) => [leastField(id), wantedField(id), mostField(id)]),
    ...askableMeasurements(pattern).map(({ id }) => bodyField(id)),
  ];
}
