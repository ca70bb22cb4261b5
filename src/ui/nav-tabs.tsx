import Link from "next/link";

export interface NavTab {
  readonly href: string;
  readonly label: string;
  readonly current: boolean;
}

/** Links between the pages of one thing. Where they do not fit in a row they take several, so that all are in sight. */
export function NavTabs({ label, tabs }: { readonly label: string; readonly tabs: readonly NavTab[] }) {
  return (
    <nav aria-label={label} className="mb-8 border-b border-line">
      <ul className="flex flex-wrap gap-x-1">
        {tabs.map(({ href, label: text, current }) => (
          <li key={href}>
            <Link
              href={href}
              prefetch={false}
              aria-current={current ? "page" : undefined}
              className="block whitespace-nowrap border-b-3 border-transparent px-3 py-2.5 text-soft max-sm:px-2 max-sm:py-1.5 hover:text-ink aria-[current=page]:border-thread aria-[current=page]:font-semibold aria-[current=page]:text-ink"
            >
              {text}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
