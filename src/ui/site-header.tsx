import Link from "next/link";
import type { ReactNode } from "react";

/** The header of every page: the name, and on the right the person's menu. */
export function SiteHeader({ menu }: { readonly menu: ReactNode }) {
  return (
    <header className="border-b border-line bg-sheet">
      <a
        href="#content"
        className="absolute left-2 top-2 z-10 -translate-y-20 rounded bg-ink px-4 py-2 text-sheet focus:translate-y-0"
      >
        Skip to content
      </a>
      <div className="mx-auto flex min-h-14 w-full max-w-7xl flex-wrap items-center justify-between gap-x-4 px-[min(1rem,5vw)] sm:px-8">
        <Link href="/" className="flex items-center gap-2.5 font-serif text-xl font-semibold tracking-tight">
          <RulerMark />
          Sizewright
        </Link>
        {menu}
      </div>
    </header>
  );
}

function RulerMark() {
  return (
    <svg width="30" height="18" viewBox="0 0 30 18" aria-hidden="true">
      <path d="M1 13h28" className="stroke-ink" strokeWidth="1.5" />
      <path d="M2 13V8M8.5 13v-3M15 13V8M21.5 13v-3M28 13V8" className="stroke-ink" strokeWidth="1.5" />
      <circle cx="18.5" cy="4" r="3" className="fill-thread" />
    </svg>
  );
}
