import Link from "next/link";
import type { PublishedOpening } from "../../listing/data";
import { untilWords } from "@/ui/moment-copy";

/** A link to the tester call. */
export function CallLink({ opening: { callId, title } }: { readonly opening: PublishedOpening }) {
  return (
    <Link href={`/open-calls/${callId}`} className="text-link">
      <bdi>{title}</bdi>
    </Link>
  );
}

/** The pattern, the designer and the last day to apply. */
export function ApplyIntro({ opening }: { readonly opening: PublishedOpening }) {
  const { pattern, designer, dates, document } = opening;
  return (
    <>
      <bdi>{pattern.name}</bdi> by <bdi>{designer}</bdi>. Apply until{" "}
      {untilWords(dates.applyUntil.at, document.timeZone)} in {document.timeZone}.
    </>
  );
}
