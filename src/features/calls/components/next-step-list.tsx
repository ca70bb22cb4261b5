import Link from "next/link";
import { nextStepHref, type NextStep } from "../call-pages";

interface NextStepListProps {
  readonly callId: string;
  readonly steps: readonly NextStep[];
  /** Draws the first as the page's main button. */
  readonly isLeading?: boolean;
}

/** The same in little room, for a page that shows other things: each message is the link. */
export function ShortStepList({ callId, steps }: Pick<NextStepListProps, "callId" | "steps">) {
  return (
    <ul className="grid gap-x-8 sm:grid-cols-2">
      {steps.map((step) => (
        <li key={step.message}>
          <Link
            href={nextStepHref(callId, step)}
            prefetch={false}
            className="inline-flex min-h-11 items-center py-1.5 text-link"
          >
            {step.message}
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** What waits for the designer of a call, each with the way to where it is done. */
export function NextStepList({ callId, steps, isLeading = false }: NextStepListProps) {
  return (
    <ul className="divide-y divide-line">
      {steps.map((step, index) => (
        <li key={step.message} className="flex flex-wrap items-baseline justify-between gap-x-6 py-1.5">
          <span>{step.message}</span>
          <Link
            href={nextStepHref(callId, step)}
            prefetch={false}
            className={
              isLeading && index === 0
                ? "button button-main my-1.5 max-sm:mt-2"
                : "inline-flex min-h-11 items-center text-link"
            }
          >
            {step.link}
          </Link>
        </li>
      ))}
    </ul>
  );
}
