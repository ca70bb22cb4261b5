import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { EmptyState } from "@/ui/empty-state";
import type { LoadedBoard, LoadedPlaces } from "../loaders";

/** What is missing before sizes can be assigned; null where nothing is. */
export function placesMissing(
  { isPublished }: LoadedPlaces,
  { board, side }: LoadedBoard,
): "listing" | "places" | "words" | null {
  const isEmpty = board.testers === 0 && board.waitingFrom === 0 && side.waiting === 0;
  if (!isEmpty || side.withoutBody.many > 0) return null;
  if (!isPublished) return "listing";
  if (board.sizes.every(({ wanted }) => wanted === 0)) return "places";
  return "words";
}

interface PlacesEmptyProps {
  readonly callId: string;
  readonly missing: NonNullable<ReturnType<typeof placesMissing>>;
  readonly applicants: number;
}

/** Shown while sizes cannot be assigned yet, with the next step. */
export function PlacesEmpty({ callId, missing, applicants }: PlacesEmptyProps) {
  switch (missing) {
    case "listing":
      return (
        <EmptyState
          title="The tester call is not published yet"
          actions={<ButtonLink href={callPageHref(callId, "setUp")}>Publish the tester call</ButtonLink>}
        >
          Once it is, people can apply. Those you accept appear here, each in the size that best fits their measurements
          and preferences.
        </EmptyState>
      );
    case "places":
      return (
        <EmptyState
          title="No tester spots yet"
          actions={<ButtonLink href={callPageHref(callId, "setUp")}>Set tester spots</ButtonLink>}
        >
          Enter how many testers you want in each size.
        </EmptyState>
      );
    case "words":
      return (
        <EmptyState
          title={applicants === 0 ? "Nobody has applied yet" : "You haven’t accepted anyone yet"}
          actions={<ButtonLink href={callPageHref(callId, "applications")}>See applications</ButtonLink>}
        >
          {applicants === 0
            ? "People who apply appear here once you accept them."
            : `${applicants === 1 ? "1 person has" : `${applicants} people have`} applied. Those you accept appear here, each in the size that best fits their measurements and preferences.`}
        </EmptyState>
      );
  }
}
