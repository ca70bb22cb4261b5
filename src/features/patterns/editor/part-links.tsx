"use client";

import { useSearchParams } from "next/navigation";
import type { MouseEvent } from "react";
import { useEditing } from "./editing";
import { EDITOR_PARTS, partOf, partOfPath, type EditorPart } from "./editor-parts";

/** The open part, from the address. */
export function usePart(): EditorPart {
  return partOf(useSearchParams().get("part"));
}

/** Links between the parts of the editor, each with the number of things to fix. */
export function PartLinks() {
  const { faults } = useEditing("faults");
  const open = usePart();
  const inPart = (part: EditorPart) => [...faults.keys()].filter((path) => partOfPath(path) === part).length;
  return (
    <nav aria-label="Parts of the pattern" className="mb-6 lg:sticky lg:top-4 lg:mb-0 lg:self-start">
      <ol className="flex flex-wrap gap-1 lg:flex-col lg:overflow-hidden lg:rounded-sheet lg:border lg:border-line lg:bg-sheet lg:gap-0 lg:divide-y lg:divide-line">
        {EDITOR_PARTS.map(({ key, label }) => (
          <li key={key}>
            <a
              href={`?part=${key}`}
              aria-current={key === open ? "page" : undefined}
              onClick={stayOnPage}
              className="flex min-h-11 items-center justify-between gap-3 px-4 py-1.5 leading-tight hover:bg-paper aria-[current=page]:bg-band aria-[current=page]:font-semibold max-lg:min-h-9 max-lg:rounded-full max-lg:border max-lg:border-line-strong max-lg:bg-sheet max-lg:px-3 max-lg:py-1 max-lg:text-sm max-lg:aria-[current=page]:border-ink max-lg:aria-[current=page]:bg-ink max-lg:aria-[current=page]:text-sheet"
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
      <span className="sr-only"> to fix</span>
    </span>
  );
}

/** Changes the address without loading a page, so that nothing typed or undone is lost. */
export function stayOnPage(event: MouseEvent<HTMLAnchorElement>): void {
  if (event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
  event.preventDefault();
  window.history.pushState(null, "", event.currentTarget.href);
}
