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
      <ul className="flex flex-wrap gap-1.5">
        {choices.map(({ href, label: text, current }) => (
          <li key={href}>
            <Link
              href={href}
              scroll={false}
              aria-current={current ? "true" : undefined}
              className="flex min-h-9 min-w-9 items-center justify-center rounded-full border border-line-strong bg-sheet px-3 text-sm hover:border-ink aria-[current=true]:border-ink aria-[current=true]:bg-ink aria-[current=true]:font-semibold aria-[current=true]:text-sheet"
            >
              {text}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
