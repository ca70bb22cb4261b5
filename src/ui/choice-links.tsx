"use client";

import Link from "next/link";

export interface ChoiceLink {
  readonly href: string;
  readonly label: string;
  readonly current: boolean;
}

/** One of a few, chosen by a link: sizes, units, ways to read a page. */
export function ChoiceLinks({ label, choices }: { readonly label: string; readonly choices: readonly ChoiceLink[] }) {
  return (
    <nav aria-label={label}>
      <ul className="choice-links flex flex-wrap gap-1.5">
        {choices.map(({ href, label: text, current }) => (
          <li key={href}>
            <Link href={href} scroll={false} aria-current={current ? "true" : undefined}>
              {text}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
