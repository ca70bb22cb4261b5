import type { ReactNode } from "react";
import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import { EmptyState } from "@/ui/empty-state";
import { dueWords } from "../due-copy";
import type { OwnTest } from "../own-tests-data";

const STATES: Readonly<Record<OwnTest["state"], string>> = {
  testing: "You are testing",
  reported: "Your report is sent",
  stopped: "You have stopped",
  invited: "You are invited; please answer",
  applied: "You have applied",
  withdrawn: "You have withdrawn your application",
};

interface OwnTestsProps {
  readonly tests: readonly OwnTest[];
  readonly now: Date;
  /** Draws a test's garment. */
  readonly drawingOf: (pattern: PatternDocument) => ReactNode;
}

/** A person's tests and applications, each with its state. */
export function OwnTests({ tests, now, drawingOf }: OwnTestsProps) {
  if (tests.length === 0)
    return (
      <EmptyState title="No tests yet">
        <p>
          Tests that you apply for while signed in are listed here. If you joined a test through a link, open the link
          again and use your account for it.
        </p>
      </EmptyState>
    );
  return (
    <ul className="grid gap-4">
      {tests.map((test) => (
        <li
          key={test.key}
          className="relative flex flex-col-reverse gap-x-6 gap-y-3 rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet hover:border-line-strong sm:flex-row sm:justify-between"
        >
          <div className="min-w-0">
            <h2 className="text-xl wrap-anywhere">
              <Link href={test.href} prefetch={false} className="after:absolute after:inset-0">
                <bdi>{test.patternName}</bdi>
                {test.sizeLabel === null ? null : (
                  <>
                    , size <bdi>{test.sizeLabel}</bdi>
                  </>
                )}
              </Link>
            </h2>
            <p className="text-sm text-soft wrap-anywhere">
              <bdi>{test.callTitle}</bdi>, for <bdi>{test.designerName}</bdi>
            </p>
            <p className="mt-1.5 numbers">
              <span className="font-semibold">{STATES[test.state]}</span>
              {test.isClosed ? "; the test is closed" : dueIn(test, now)}
            </p>
          </div>
          {test.pattern === null ? null : <div className="shrink-0">{drawingOf(test.pattern)}</div>}
        </li>
      ))}
    </ul>
  );
}

function dueIn({ state, dates, timeZone: zone }: OwnTest, now: Date): string {
  if (state !== "testing" || dates === null) return "";
  const { day, from } = dueWords(dates.reportBy.at, { zone, now });
  return `; report by ${day}, ${from}`;
}
