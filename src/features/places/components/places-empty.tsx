import { ButtonLink } from "@/ui/button";
import { EmptyState } from "@/ui/empty-state";
import type { LoadedBoard, LoadedPlaces } from "../loaders";

/** What is missing before places can be given; null where nothing is. */
export function placesMissing(
  { isPublished }: LoadedPlaces,
  { board, side }: LoadedBoard,
): "opening" | "places" | "words" | null {
  const isEmpty = board.testers === 0 && board.waitingFrom === 0 && side.waiting === 0;
  if (!isEmpty || side.withoutBody.many > 0) return null;
  if (!isPublished) return "opening";
  if (board.sizes.every(({ wanted }) => wanted === 0)) return "places";
  return "words";
}

interface PlacesEmptyProps {
  readonly callId: string;
  readonly missing: NonNullable<ReturnType<typeof placesMissing>>;
  readonly applicants: number;
}

/** What stands where nobody can be placed yet, and the way on. */
export function PlacesEmpty({ callId, missing, applicants }: PlacesEmptyProps) {
  switch (missing) {
    case "opening":
      return (
        <EmptyState
          title="This call is not published yet"
          actions={<ButtonLink href={`/calls/${callId}/opening`}>To the opening</ButtonLink>}
        >
          Once it is, people can apply; those with your yes are placed here, each in the size that her body and her
          wishes speak for.
        </EmptyState>
      );
    case "places":
      return (
        <EmptyState
          title="No places are set yet"
          actions={<ButtonLink href={`/calls/${callId}/opening`}>Set the places</ButtonLink>}
        >
          Say in the opening how many testers each size is to have.
        </EmptyState>
      );
    case "words":
      return (
        <EmptyState
          title={applicants === 0 ? "Nobody has applied yet" : "Nobody has your yes yet"}
          actions={<ButtonLink href={`/calls/${callId}/applications`}>See the applications</ButtonLink>}
        >
          {applicants === 0
            ? "Those who apply, and whom you say yes to, are placed here."
            : `${applicants === 1 ? "1 person has" : `${applicants} people have`} applied. Those with your yes are placed here, each in the size that her body and her wishes speak for.`}
        </EmptyState>
      );
  }
}
