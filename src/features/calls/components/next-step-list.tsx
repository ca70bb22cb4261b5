import Link from "next/link";
import { callPageHref } from "../call-pages";
import type { NextStep } from "../next-steps";

/** What waits for the designer of a call, each with the way to where it is done. */
export function NextStepList({ callId, steps }: { readonly callId: string; readonly steps: readonly NextStep[] }) {
  return (
    <ul className="divide-y divide-line">
      {steps.map(({ page, message, link }) => (
        <li key={message} className="flex flex-wrap items-baseline justify-between gap-x-6 py-1.5">
          <span>{message}</span>
          <Link
            href={callPageHref(callId, page)}
            prefetch={false}
            className="inline-flex min-h-11 items-center text-link"
          >
            {link}
          </Link>
        </li>
      ))}
    </ul>
  );
}
