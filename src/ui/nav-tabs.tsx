"use client";

import Link from "next/link";

export interface NavTab {
  readonly href: string;
  readonly label: string;
  readonly current: boolean;
}

/** Links between the pages of one thing. They wrap into several rows so that all are visible. */
export function NavTabs({ label, tabs }: { readonly label: string; readonly tabs: readonly NavTab[] }) {
  return (
    <nav aria-label={label} className="nav-tabs mb-8 border-b border-line">
      <ul className="flex flex-wrap gap-x-1">
        {tabs.map(({ href, label: text, current }) => (
          <li key={href}>
            <Link href={href} prefetch={false} aria-current={current ? "page" : undefined}>
              {text}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
