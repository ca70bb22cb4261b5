import type { ReactNode } from "react";

export interface TextPart {
  readonly anchor: string;
  readonly label: string;
}

interface TextPartsNavProps {
  readonly parts: readonly TextPart[];
  /** An item before them. */
  readonly first?: ReactNode;
}

/** Navigation between the parts of a long page; it stays visible and scrolls sideways if it is wider than the screen. */
export function TextPartsNav({ parts, first }: TextPartsNavProps) {
  return (
    <nav
      aria-label="Parts of the pattern"
      className="sticky top-0 z-10 -mx-[min(1rem,5vw)] mb-8 mt-8 border-b border-line-strong bg-paper px-[min(1rem,5vw)] sm:mx-0 sm:px-0"
    >
      <ul className="-ml-2 flex gap-x-1 overflow-x-auto">
        {first}
        {parts.map(({ anchor, label }) => (
          <li key={anchor} className="shrink-0">
            <a
              href={`#${anchor}`}
              className="flex min-h-11 max-w-56 items-center px-2 text-[0.9375rem] text-soft hover:text-ink hover:underline"
            >
              <bdi className="truncate">{label}</bdi>
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
