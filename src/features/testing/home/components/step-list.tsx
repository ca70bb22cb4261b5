"use client";

import Link from "next/link";
import type { StepPage, TesterStep } from "../tester-steps";

interface StepListProps {
  /** Address of the tester's home page. */
  readonly home: string;
  readonly steps: readonly TesterStep[];
  readonly current?: StepPage;
}

const STATES = {
  empty: { sign: "○", words: "not started" },
  begun: { sign: "◐", words: "started" },
  complete: { sign: "●", words: "done" },
  faulty: { sign: "▲", words: "needs fixing" },
} as const;

/** A tester's steps, each with its progress. A client component, so that the list is sent as words and not again as elements. */
export function StepList({ home, steps, current }: StepListProps) {
  return (
    <ol className="rounded-sheet border border-line bg-sheet shadow-sheet">
      {steps.map((step) => (
        <li key={step.page} className="border-b border-line last:border-b-0">
          <Link
            href={`${home}/${step.page}`}
            prefetch={false}
            aria-current={step.page === current ? "page" : undefined}
            className={`group flex items-center gap-3 px-[min(1rem,5vw)] hover:bg-band aria-[current=page]:bg-band ${current === undefined ? "min-h-12 py-2" : "min-h-12 py-2 max-lg:min-h-10 max-lg:py-1"}`}
          >
            <StepSign state={step.state} />
            <span
              className={`min-w-0 flex-1 ${current === undefined ? "" : "max-lg:flex max-lg:flex-wrap max-lg:items-baseline max-lg:justify-between max-lg:gap-x-3"}`}
            >
              <span className="block group-aria-[current=page]:font-semibold">{step.label}</span>
              {step.message ? <span className="block text-sm text-soft numbers">{step.message}</span> : null}
            </span>
          </Link>
        </li>
      ))}
    </ol>
  );
}

function StepSign({ state }: { readonly state: TesterStep["state"] }) {
  if (state === null) return <span aria-hidden="true" className="w-5 shrink-0" />;
  const { sign, words } = STATES[state];
  return (
    <span className={`w-5 shrink-0 text-center ${state === "faulty" ? "text-thread" : ""}`}>
      <span aria-hidden="true">{sign}</span>
      <span className="sr-only">{words}:</span>
    </span>
  );
}
