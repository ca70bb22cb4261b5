import Link from "next/link";
import { callPageHref, type NextStep } from "../call-pages";

interface NextStepListProps {
  readonly callId: string;
  readonly steps: readonly NextStep[];
  /** Draws the first as the page's main button. */
  readonly isLeading?: boolean;
}

/** What waits for the designer of a call, each with the way to where it is done. */
export function NextStepList({ callId, steps, isLeading = false }: NextStepListProps) {
  return (
    <ul className="divide-y divide-line">
      {steps.map(({ page, search, message, link }, index) => (
        <li key={message} className="flex flex-wrap items-baseline justify-between gap-x-6 py-1.5">
          <span>{message}</span>
          <Link
            href={`${callPageHref(callId, page)}${search ?? ""}`}
            prefetch={false}
            className={
              isLeading && index === 0
                ? "button button-main my-1.5 max-sm:mt-2"
                : "inline-flex min-h-11 items-center text-link"
            }
          >
            {link}
          </Link>
        </li>
      ))}
    </ul>
  );
}
