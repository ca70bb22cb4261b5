import Link from "next/link";
import type { PublishedOpening } from "@/features/openings/data";
import { untilWords } from "@/ui/moment-words";

/** The way to what the call tells. */
export function CallLink({ opening: { callId, title } }: { readonly opening: PublishedOpening }) {
  return (
    <Link href={`/open-calls/${callId}`} className="text-link">
      <bdi>{title}</bdi>
    </Link>
  );
}

/** What is applied for, with whom, and until when. */
export function ApplyIntro({ opening }: { readonly opening: PublishedOpening }) {
  const { pattern, designer, dates, document } = opening;
  return (
    <>
      <bdi>{pattern.name}</bdi>, a call by <bdi>{designer}</bdi>. Until{" "}
      {untilWords(dates.applyUntil.at, document.timeZone)} in {document.timeZone}.
    </>
  );
}
