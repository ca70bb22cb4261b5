"use client";

import { useSearchParams } from "next/navigation";
import type { MouseEvent } from "react";
import { useEditing } from "./editing";
import { EDITOR_PARTS, partOf, partOfPath, type EditorPart } from "./editor-parts";

/** The part that is open, as the address says. */
export function usePart(): EditorPart {
  return partOf(useSearchParams().get("part"));
}

/** Links between the parts of the editor, each with how much in it is to be looked at. */
export function PartLinks() {
  const { faults } = useEditing("faults");
  const open = usePart();
  const inPart = (part: EditorPart) => [...faults.keys()].filter((path) => partOfPath(path) === part).length;
  return (
    <nav aria-label="Parts of the pattern" className="mb-6 lg:sticky lg:top-4 lg:mb-0 lg:self-start">
      <ol className="flex flex-wrap lg:flex-col lg:gap-1">
        {EDITOR_PARTS.map(({ key, label }) => (
          <li key={key}>
            <a
              href={`?part=${key}`}
              aria-current={key === open ? "page" : undefined}
              onClick={stayOnPage}
              className="flex min-h-11 items-center justify-between gap-3 rounded-md px-3 py-1.5 max-lg:min-h-9 max-lg:px-2.5 max-lg:py-1 leading-tight text-soft hover:bg-band hover:text-ink aria-[current=page]:bg-ink aria-[current=page]:font-semibold aria-[current=page]:text-white"
            >
              {label}
              {inPart(key) > 0 ? <Marked count={inPart(key)} /> : null}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function Marked({ count }: { readonly count: number }) {
  return (
    <span className="numbers whitespace-nowrap rounded bg-thread-tint px-1.5 text-sm font-semibold text-thread">
      ▲ {count}
      <span className="sr-only"> to look at again</span>
    </span>
  );
}

/** The address changes, and nothing that was typed or undone is lost by a new page. */
export function stayOnPage(event: MouseEvent<HTMLAnchorElement>): void {
  if (event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
  event.preventDefault();
  window.history.pushState(null, "", event.currentTarget.href);
}
