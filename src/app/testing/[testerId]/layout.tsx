import type { Metadata } from "next";
import type { ReactNode } from "react";

/** A tester's pages are private, so search engines must not index them. */
export const metadata: Metadata = { robots: { index: false, follow: false } };

export default function TesterLayout({ children }: { readonly children: ReactNode }) {
  return children;
}
