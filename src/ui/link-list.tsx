import Link from "next/link";
import type { ReactNode } from "react";

interface LinkListProps {
  readonly items: readonly {
    readonly href: string;
    readonly name: string;
    readonly says: ReactNode;
  }[];
}

/** A row each: a name that leads on, and a few words about it. */
export function LinkList({ items }: LinkListProps) {
  return (
    <ul className="divide-y divide-line rounded-sheet border border-line bg-sheet shadow-sheet">
      {items.map(({ href, name, says }) => (
        <li key={href} className="flex flex-wrap items-baseline justify-between gap-x-6 px-5 py-3">
          <Link href={href} className="text-link min-w-0 font-semibold wrap-anywhere">
            {name}
          </Link>
          <p className="text-soft wrap-anywhere">{says}</p>
        </li>
      ))}
    </ul>
  );
}
