import type { PlacedReason, WaitingReason, WouldTake } from "./stored-placing";

/** The engine's reasons in sentences without lengths, which stand beside them in the reader's own unit. */
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
        return "You gave her this size.";
      case "only":
        return "The one size with places that is within reach and that she accepts.";
      case "best":
        return bestWords(reason);
      case "instead":
        return reason.passedOver
          .map(({ size, because }) =>
            because === "full"
              ? `${this.size(size)} would suit her better, but its places are given to others.`
              : `${this.size(size)} would suit her better, but this size would be short without her.`,
          )
          .join(" ");
    }
  }

  waiting(reason: WaitingReason): string {
    switch (reason.kind) {
      case "excluded":
        return "You leave her waiting.";
      case "accepts-none":
        return "She accepts no size.";
      case "no-places":
        return "No size has a place left.";
      case "full":
        return `All places in ${this.list(reason.sizes)} are given to others, and no other size is open to her.`;
      case "none-open":
        return this.noneOpen(reason);
    }
  }

  /** What would have to give way for her to come into a size. */
  wouldTake({ isWithinReach, isAccepted, standsIn }: WouldTake): string {
    const gives = [
      isWithinReach ? "" : "The size is out of her body’s reach.",
      isAccepted ? "" : "She did not accept this size: ask her.",
      standsIn === null ? "" : this.leaves(standsIn),
    ].filter((sentence) => sentence !== "");
    return gives.length === 0 ? "Nothing stands against it." : gives.join(" ");
  }

  list(ids: readonly string[]): string {
    const labels = ids.map((id) => this.size(id));
    const last = labels.at(-1) ?? "";
    return labels.length < 2 ? last : `${labels.slice(0, -1).join(", ")} and ${last}`;
  }

  private noneOpen({ nearest, refused, withoutPlaces }: Extract<WaitingReason, { kind: "none-open" }>): string {
    const verb = (sizes: readonly string[]) => (sizes.length === 1 ? "is" : "are");
    return [
      nearest === null
        ? "No tester is wanted in a size that she accepts."
        : `No size with places that she accepts is within reach; the nearest is ${this.size(nearest.size)}.`,
      refused.length === 0 ? "" : `${this.list(refused)} ${verb(refused)} within reach, but not accepted by her.`,
      withoutPlaces.length === 0
        ? ""
        : `${this.list(withoutPlaces)} ${verb(withoutPlaces)} within reach, but no place is left there.`,
    ]
      .filter((sentence) => sentence !== "")
      .join(" ");
  }

  private leaves({ size, isLocked, wouldBeShort }: NonNullable<WouldTake["standsIn"]>): string {
    const stands = isLocked ? `You gave her ${this.size(size)}` : `She stands in ${this.size(size)}`;
    return wouldBeShort ? `${stands}, which would then be short.` : `${stands}.`;
  }
}

function bestWords({ isNearestBody, isFirstChoice }: Extract<PlacedReason, { kind: "best" }>): string {
  if (isNearestBody && isFirstChoice) return "Nearest to her body, and her first choice.";
  if (isNearestBody) return "Nearest to her body of the sizes open to her.";
  return isFirstChoice ? "Her first choice." : "Suits her best with her wishes counted.";
}
