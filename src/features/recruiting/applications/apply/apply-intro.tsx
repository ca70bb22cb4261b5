import Link from "next/link";
import type { PublishedListing } from "../../listing/data";
import { untilWords } from "@/ui/moment-copy";

/** A link to the tester call. */
export function CallLink({ listing: { callId, title } }: { readonly listing: PublishedListing }) {
  return (
    <Link href={`/open-calls/${callId}`} className="text-link">
      <bdi>{title}</bdi>
    </Link>
  );
}

/** The pattern, the designer and the last day to apply. */
export function ApplyIntro({ listing }: { readonly listing: PublishedListing }) {
  const { pattern, designer, dates, document } = listing;
  return (
    <>
      <bdi>{pattern.name}</bdi> by <bdi>{designer}</bdi>. Apply until{" "}
      {untilWords(dates.applyUntil.at, document.timeZone)} in {document.timeZone}.
    </>
  );
}
