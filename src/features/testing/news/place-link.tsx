import Link from "next/link";
import { findBlock, type Place } from "@/engine/instructions";
import { blockAnchor } from "../questions/place-key";

interface PlaceLinkProps {
  readonly testerId: string;
  /** The tester's instructions. */
  readonly text: string;
  readonly place: Place;
}

/** The words of a passage, leading to it; without a link where the tester's text does not have it. */
export function PlaceLink({ testerId, text, place }: PlaceLinkProps) {
  const block = findBlock(text, place);
  if (block === null)
    return (
      <>
        “<bdi>{place.words}</bdi>”, which is not in your text
      </>
    );
  return (
    <Link
      href={`/testing/${testerId}/pattern#${blockAnchor(block.place)}`}
      prefetch={false}
      className="text-link line-clamp-2"
    >
      “<bdi>{block.text}</bdi>”
    </Link>
  );
}
