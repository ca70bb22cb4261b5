import Link from "next/link";
import type { RunningTest } from "./deletion-data";

/** Leads to tests whose testers are at work. */
export function RunningLinks({ running }: { readonly running: readonly RunningTest[] }) {
  return (
    <ul className="mt-2">
      {running.map(({ callId, title }) => (
        <li key={callId}>
          <Link href={`/calls/${callId}/progress`} className="text-link">
            <bdi>{title}</bdi>
          </Link>
        </li>
      ))}
    </ul>
  );
}
