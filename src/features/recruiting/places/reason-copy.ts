import type { PlacedReason, WaitingReason, WouldTake } from "./stored-board";

/** The engine's reasons in sentences without lengths, which are shown beside them in the reader's unit. */
export class PlaceWords {
  private readonly labels: ReadonlyMap<string, string>;

  constructor(sizes: readonly { readonly id: string; readonly label: string }[]) {
    this.labels = new Map(sizes.map(({ id, label }) => [id, label]));
  }

  size(id: string): string {
    return this.labels.get(id) ?? id;
  }

  placed(reason: PlacedReason): string {
    switch (reason.kind) {
      case "locked":
        return "You chose this size.";
      case "only":
        return "The only size with open spots that fits and that they accept.";
      case "best":
        return bestWords(reason);
      case "instead":
        return reason.passedOver
          .map(({ size, because }) =>
            because === "full"
              ? `${this.size(size)} would suit them better, but its spots are taken.`
              : `${this.size(size)} would suit them better, but this size would have too few testers without them.`,
          )
          .join(" ");
    }
  }

  waiting(reason: WaitingReason): string {
    switch (reason.kind) {
      case "excluded":
        return "You left them waiting.";
      case "accepts-none":
        return "They accept no size.";
      case "no-places":
        return "No size has an open spot.";
      case "full":
        return `All spots in ${this.list(reason.sizes)} are taken, and they can take no other size.`;
      case "none-open":
        return this.noneOpen(reason);
    }
  }

  /** What it would take to give them a size. */
  wouldTake({ isWithinReach, isAccepted, standsIn }: WouldTake): string {
    const gives = [
      isWithinReach ? "" : "The size doesn’t fit their body.",
      isAccepted ? "" : "They did not accept this size: ask them.",
      standsIn === null ? "" : this.leaves(standsIn),
    ].filter((sentence) => sentence !== "");
    return gives.length === 0 ? "Nothing prevents it." : gives.join(" ");
  }

  list(ids: readonly string[]): string {
    const labels = ids.map((id) => this.size(id));
    const last = labels.at(-1) ?? "";
    return labels.length < 2 ? last : `${labels.slice(0, -1).join(", ")} and ${last}`;
  }

  private noneOpen({ nearest, refused, withoutPlaces }: Extract<WaitingReason, { kind: "none-open" }>): string {
    return [
      nearest === null
        ? "No size that they accept needs testers."
        : `No size with spots that they accept fits; the nearest is ${this.size(nearest.size)}.`,
      refused.length === 0
        ? ""
        : `${this.list(refused)} would fit, but they didn’t accept ${refused.length === 1 ? "it" : "them"}.`,
      withoutPlaces.length === 0 ? "" : `${this.list(withoutPlaces)} would fit, but no spot is open there.`,
    ]
      .filter((sentence) => sentence !== "")
      .join(" ");
  }

  private leaves({ size, isLocked, wouldBeShort }: NonNullable<WouldTake["standsIn"]>): string {
    const stands = isLocked ? `You gave them ${this.size(size)}` : `They have ${this.size(size)}`;
    return wouldBeShort ? `${stands}, which would then have too few testers.` : `${stands}.`;
  }
}

function bestWords({ isNearestBody, isFirstChoice }: Extract<PlacedReason, { kind: "best" }>): string {
  if (isNearestBody && isFirstChoice) return "Best fit and their first choice.";
  if (isNearestBody) return "Best fit of the sizes available to them.";
  return isFirstChoice ? "Their first choice." : "Best match of fit and preferences.";
}
