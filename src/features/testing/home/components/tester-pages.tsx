import type { Viewport } from "next";
import type { ReactNode } from "react";

/** The paper's colours, for what the browser draws around a tester's page. */
export const testerViewport: Viewport = {
  colorScheme: "light dark",
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#f6f0e4" },
    { media: "(prefers-color-scheme: dark)", color: "#1b1612" },
  ],
};

/** Pages that turn dark where the reader has set so. */
export function TesterPages({ children }: { readonly children: ReactNode }) {
  return <div className="tester-pages contents">{children}</div>;
}
