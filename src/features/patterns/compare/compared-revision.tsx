import Link from "next/link";
import { Day } from "@/ui/day";
import type { Revision } from "../data";

interface ComparedRevisionProps {
  readonly home: string;
  readonly side: "From" | "To";
  readonly revision: Revision;
}

/** Who made a revision, when and why. */
export function ComparedRevision({
  home,
  side,
  revision: { number, reason, createdBy, createdAt },
}: ComparedRevisionProps) {
  return (
    <div className="min-w-0 rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet">
      <h3>
        {side}{" "}
        <Link href={`${home}/revisions/${number}`} className="text-link">
          revision {number}
        </Link>
      </h3>
      <p className="mt-1 wrap-anywhere">
        <bdi>{reason}</bdi>
      </p>
      <p className="mt-1 text-sm text-soft wrap-anywhere">
        <bdi>{createdBy ?? "someone who has left"}</bdi>, <Day at={createdAt} />
      </p>
    </div>
  );
}
