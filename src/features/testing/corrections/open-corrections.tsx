import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { Notice } from "@/ui/notice";
import type { CallWithOpen } from "./correction-data";

/** Where a pattern is edited: the corrections from its tests that no revision has yet, and the way to take them in. */
export function OpenCorrections({ calls }: { readonly calls: readonly CallWithOpen[] }) {
  if (calls.length === 0) return null;
  return (
    <Notice title="Corrections from your tests are not in the pattern yet">
      <ul>
        {calls.map(({ callId, title, many }) => (
          <li key={callId} className="wrap-anywhere">
            <bdi>{title}</bdi>: {many === 1 ? "1 correction" : `${many} corrections`}.{" "}
            <Link href={`${callPageHref(callId, "questions")}#corrections`} prefetch={false} className="text-link">
              Save a revision with {many === 1 ? "it" : "them"}, or mark {many === 1 ? "it" : "them"} as done
            </Link>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
