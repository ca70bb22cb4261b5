"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import type { NextPage } from "./step-bar";

interface NextLinkProps {
  readonly next: NextPage;
  /** What the way to the next page waits for: it is to show what was just typed. */
  readonly beforeNext: () => Promise<void>;
}

/** The way on from a form that saves itself. Without JavaScript the form's own buttons stand there instead. */
export function NextLink({ next: { href, label }, beforeNext }: NextLinkProps) {
  const router = useRouter();
  return (
    <Link
      href={href}
      prefetch={false}
      className="button button-main [@media(scripting:none)]:hidden"
      onNavigate={(event) => {
        event.preventDefault();
        // Not before the router has taken in the answer to the save: it would discard that, and go back to draw it anew.
        void beforeNext().then(() => setTimeout(() => router.push(href)));
      }}
    >
      <span className="min-w-0 wrap-anywhere">Next: {label}</span>
    </Link>
  );
}
