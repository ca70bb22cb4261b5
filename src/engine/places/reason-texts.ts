import type { PatternDocument } from "../pattern";
import type { BodyDifference } from "./fit-in-size";
import type { PassedOver, PlacedReason, WaitingReason, WouldTake } from "./place-reason";

/** Sentences for the reasons of a board, by the labels of its pattern, lengths in cm. */
export class ReasonTexts {
  private readonly sizes: ReadonlyMap<string, string>;
  private readonly body: ReadonlyMap<string, string>;

  constructor({ sizes, bodyMeasurements = [] }: PatternDocument) {
    this.sizes = new Map(sizes.map(({ id, label }) => [id, label]));
    this.body = new Map(bodyMeasurements.map(({ id, label }) => [id, label]));
  }

  /** @param sizeId where she stands. */
  placed(reason: PlacedReason, sizeId: string): string {
    return sentences(this.placedBecause(reason, this.size(sizeId)), this.differences(reason.differences));
  }

  waiting(reason: WaitingReason): string {
    switch (reason.kind) {
      case "excluded":
        return "The designer has left her out.";
      case "accepts-none":
        return "She accepts no size.";
      case "no-places":
        return "No size has a place.";
      case "full":
        return reason.sizes.length === 1
          ? `Every place in ${this.list(reason.sizes)}, the one size open to her, is given to someone else.`
          : `Every place in ${this.list(reason.sizes)}, the sizes open to her, is given to someone else.`;
      case "none-open":
        return this.noneOpen(reason);
    }
  }

  wouldTake({ differences, isAccepted, standsIn }: WouldTake): string {
    return sentences(
      this.differences(differences),
      isAccepted ? "" : "She does not accept this size.",
      standsIn === null ? "" : this.leaves(standsIn),
    );
  }

  /** "Her bust is 9 cm above the size's, 3 cm out of reach." */
  differences(differences: readonly BodyDifference[]): string {
    const parts = differences.map((difference) => this.difference(difference));
    return parts.length === 0 ? "" : `Her ${parts.join("; her ")}.`;
  }

  private placedBecause(reason: PlacedReason, size: string): string {
    switch (reason.kind) {
      case "locked":
        return `The designer has given her ${size}.`;
      case "only":
        return `${size} is the one size with places that is within reach and that she accepts.`;
      case "best":
        return bestText(reason, size);
      case "instead":
        return `${reason.passedOver.map((passed) => this.passed(passed, size)).join("; ")}. Of the sizes left to her, ${size} suits her best.`;
    }
  }

  private passed({ size, because }: PassedOver, instead: string): string {
    return because === "full"
      ? `${this.size(size)} would suit her better, but its places are given to others`
      : `${this.size(size)} would suit her better, but ${instead} would be short without her`;
  }

  private noneOpen({ nearest, refused, withoutPlaces }: Extract<WaitingReason, { kind: "none-open" }>): string {
    const verb = (sizes: readonly string[]) => (sizes.length === 1 ? "is" : "are");
    return sentences(
      nearest === null
        ? "No tester is wanted in a size that she accepts."
        : `No size with places that she accepts is within reach; the nearest is ${this.size(nearest.size)}.`,
      this.differences(nearest?.differences ?? []),
      refused.length === 0 ? "" : `${this.list(refused)} ${verb(refused)} within reach, but not accepted by her.`,
      withoutPlaces.length === 0
        ? ""
        : `${this.list(withoutPlaces)} ${verb(withoutPlaces)} within reach, but no tester is wanted there.`,
    );
  }

  private leaves({ size, isLocked, wouldBeShort }: NonNullable<WouldTake["standsIn"]>): string {
    const stands = isLocked ? `The designer has given her ${this.size(size)}` : `She is placed in ${this.size(size)}`;
    return wouldBeShort ? `${stands}, which would then be short.` : `${stands}.`;
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

/** `3 cm`, `2.5 cm`; what is less than a millimetre in words, so that nothing is "0 cm out of reach". */
function cmText(cm: number): string {
  return cm < RESOLUTION_CM / 2 ? "less than 0.1 cm" : `${Math.round(cm / RESOLUTION_CM) / 10} cm`;
}

function bestText(
  { isNearestBody, isFirstChoice }: { readonly isNearestBody: boolean; readonly isFirstChoice: boolean },
  size: string,
): string {
  if (isNearestBody && isFirstChoice) return `${size} is nearest to her body, and her first choice.`;
  if (isNearestBody) return `Of the sizes open to her, ${size} is nearest to her body.`;
  return isFirstChoice ? `${size} is her first choice.` : `With her wishes counted, ${size} suits her best.`;
}

function sentences(...parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(" ");
}
