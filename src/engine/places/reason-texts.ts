import type { PatternDocument } from "../pattern";
import type { BodyDifference } from "./fit-in-size";
import type { PassedOver, PlacedReason, WaitingReason, WouldTake } from "./place-reason";

/** Texts for the reasons of an assignment, with the pattern's labels, lengths in cm. */
export class ReasonTexts {
  private readonly sizes: ReadonlyMap<string, string>;
  private readonly body: ReadonlyMap<string, string>;

  constructor({ sizes, bodyMeasurements = [] }: PatternDocument) {
    this.sizes = new Map(sizes.map(({ id, label }) => [id, label]));
    this.body = new Map(bodyMeasurements.map(({ id, label }) => [id, label]));
  }

  /** @param sizeId the assigned size. */
  placed(reason: PlacedReason, sizeId: string): string {
    return sentences(this.placedBecause(reason, this.size(sizeId)), this.differences(reason.differences));
  }

  waiting(reason: WaitingReason): string {
    switch (reason.kind) {
      case "excluded":
        return "Excluded by the designer.";
      case "accepts-none":
        return "They accept no size.";
      case "no-places":
        return "No size has a spot.";
      case "full":
        return reason.sizes.length === 1
          ? `Every spot in ${this.list(reason.sizes)}, the only size open to them, is assigned to someone else.`
          : `Every spot in ${this.list(reason.sizes)}, the sizes open to them, is assigned to someone else.`;
      case "none-open":
        return this.noneOpen(reason);
    }
  }

  wouldTake({ differences, isAccepted, standsIn }: WouldTake): string {
    return sentences(
      this.differences(differences),
      isAccepted ? "" : "They do not accept this size.",
      standsIn === null ? "" : this.leaves(standsIn),
    );
  }

  /** "Their bust is 9 cm above the size's, 3 cm out of reach." */
  differences(differences: readonly BodyDifference[]): string {
    const parts = differences.map((difference) => this.difference(difference));
    return parts.length === 0 ? "" : `Their ${parts.join("; their ")}.`;
  }

  private placedBecause(reason: PlacedReason, size: string): string {
    switch (reason.kind) {
      case "locked":
        return `The designer assigned ${size}.`;
      case "only":
        return `${size} is the only size with spots that is within reach and that they accept.`;
      case "best":
        return bestText(reason, size);
      case "instead":
        return `${reason.passedOver.map((passed) => this.passed(passed, size)).join("; ")}. Of the remaining sizes, ${size} fits them best.`;
    }
  }

  private passed({ size, because }: PassedOver, instead: string): string {
    return because === "full"
      ? `${this.size(size)} would fit them better, but its spots are assigned to others`
      : `${this.size(size)} would fit them better, but ${instead} would fall below its minimum without them`;
  }

  private noneOpen({ nearest, refused, withoutPlaces }: Extract<WaitingReason, { kind: "none-open" }>): string {
    const verb = (sizes: readonly string[]) => (sizes.length === 1 ? "is" : "are");
    return sentences(
      nearest === null
        ? "No tester is needed in a size that they accept."
        : `No size with spots that they accept is within reach; the nearest is ${this.size(nearest.size)}.`,
      this.differences(nearest?.differences ?? []),
      refused.length === 0 ? "" : `${this.list(refused)} ${verb(refused)} within reach, but not accepted by them.`,
      withoutPlaces.length === 0
        ? ""
        : `${this.list(withoutPlaces)} ${verb(withoutPlaces)} within reach, but no tester is needed there.`,
    );
  }

  private leaves({ size, isLocked, wouldBeShort }: NonNullable<WouldTake["standsIn"]>): string {
    const stands = isLocked ? `The designer assigned ${this.size(size)}` : `They have ${this.size(size)}`;
    return wouldBeShort ? `${stands}, which would then fall below its minimum.` : `${stands}.`;
  }

  private difference({ measurement, cm, beyondCm }: BodyDifference): string {
    const label = this.body.get(measurement) ?? measurement.replaceAll("-", " ");
    const name = label.charAt(0).toLowerCase() + label.slice(1);
    const beyond = beyondCm > 0 ? `, ${cmText(beyondCm)} out of reach` : "";
    if (Math.abs(cm) < RESOLUTION_CM / 2) return `${name} is the size's${beyond}`;
    return `${name} is ${cmText(Math.abs(cm))} ${cm > 0 ? "above" : "below"} the size's${beyond}`;
  }

  private size(id: string): string {
    return this.sizes.get(id) ?? id;
  }

  private list(ids: readonly string[]): string {
    const labels = ids.map((id) => this.size(id));
    const last = labels.at(-1) ?? "";
    return labels.length < 2 ? last : `${labels.slice(0, -1).join(", ")} and ${last}`;
  }
}

const RESOLUTION_CM = 0.1;

/** `3 cm`, `2.5 cm`; a length below a millimetre is spelled out, so that nothing is "0 cm out of reach". */
function cmText(cm: number): string {
  return cm < RESOLUTION_CM / 2 ? "less than 0.1 cm" : `${Math.round(cm / RESOLUTION_CM) / 10} cm`;
}

function bestText(
  { isNearestBody, isFirstChoice }: { readonly isNearestBody: boolean; readonly isFirstChoice: boolean },
  size: string,
): string {
  if (isNearestBody && isFirstChoice) return `${size} is nearest to their body, and their first choice.`;
  if (isNearestBody) return `Of the sizes open to them, ${size} is nearest to their body.`;
  return isFirstChoice ? `${size} is their first choice.` : `With their preferences, ${size} fits them best.`;
}

function sentences(...parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(" ");
}
