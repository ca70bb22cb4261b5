"use client";

import { useId, type ReactNode } from "react";
import { useEditingValue } from "./editing";

interface OpeningCardProps {
  /** Shown while closed; also its heading. */
  readonly head: ReactNode;
  /** A line about it, closed. */
  readonly summary?: ReactNode;
  /** Its path in the draft: errors in it are counted while it is closed. */
  readonly path: string;
  readonly buttons: ReactNode;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  /** Drawn while it is open. */
  readonly children: () => ReactNode;
}

/** An item of a list in which most are closed; a closed one costs nothing to draw. */
export function OpeningCard({ head, summary, path, buttons, isOpen, onToggle, children }: OpeningCardProps) {
  const id = useId();
  const wrong = useEditingValue(({ faults }) =>
    isOpen ? 0 : [...faults.keys()].filter((each) => each.startsWith(path)).length,
  );
  return (
    <li className="rounded-sheet border border-line bg-sheet shadow-sheet">
      <div className="flex flex-wrap items-center gap-x-4 pr-2 sm:flex-nowrap">
        <h3 className="min-w-0 flex-1 basis-56 font-sans text-base">
          <button
            type="button"
            aria-expanded={isOpen}
            aria-controls={id}
            onClick={onToggle}
            className="flex min-h-13 w-full items-center gap-3 rounded-sheet px-4 py-2 text-left hover:text-thread"
          >
            <span aria-hidden="true" className={`text-soft transition-transform ${isOpen ? "rotate-90" : ""}`}>
              ▸
            </span>
            <span className="flex min-w-0 flex-1 flex-wrap items-center gap-x-4 gap-y-0.5 wrap-anywhere">
              <span className="flex min-w-0 items-center gap-3">{head}</span>
              {isOpen ? null : <span className="numbers text-sm font-normal text-soft">{summary}</span>}
              {wrong > 0 ? (
                <span className="numbers whitespace-nowrap rounded bg-thread-tint px-1.5 text-sm text-thread">
                  ▲ {wrong} to fix
                </span>
              ) : null}
            </span>
          </button>
        </h3>
        <span className="ml-auto">{buttons}</span>
      </div>
      <div id={id} hidden={!isOpen}>
        {isOpen ? <div className="border-t border-line px-4 pb-5 pt-4">{children()}</div> : null}
      </div>
    </li>
  );
}
