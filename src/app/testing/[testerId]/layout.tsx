import type { Metadata } from "next";
import type { ReactNode } from "react";

/** A tester's pages are hers alone: whatever one is called, no search engine keeps it. */
export const metadata: Metadata = { robots: { index: false, follow: false } };

export default function TesterLayout({ children }: { readonly children: ReactNode }) {
  return children;
}
