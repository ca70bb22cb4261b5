"use client";

import { useOwnPlace } from "./use-own-place";

interface OwnPlaceLinkProps {
  readonly testerId: string;
  /** Keys of the passages. */
  readonly passages: readonly string[];
}

/** In the list of a text's parts: the way to the passage that the tester has marked; nothing if none is. */
export function OwnPlaceLink({ testerId, passages }: OwnPlaceLinkProps) {
  const [own] = useOwnPlace(testerId, passages);
  if (own === null) return null;
  return (
    <li className="shrink-0">
      <a
        href={`#place-${own}`}
        className="flex min-h-11 items-center px-2 text-[0.9375rem] font-semibold hover:underline"
      >
        <span aria-hidden="true">▸&nbsp;</span>You are here
      </a>
    </li>
  );
}
