import type { Metadata, Viewport } from "next";
import localFont from "next/font/local";
import type { ReactNode } from "react";
import { AccountMenu } from "@/features/accounts/components/account-menu";
import { SiteHeader } from "@/ui/site-header";
import "./globals.css";

const sans = localFont({
  src: "../../node_modules/@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2",
  variable: "--font-source-sans",
  weight: "200 900",
});

const serif = localFont({
  src: "../../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2",
  variable: "--font-source-serif",
  weight: "200 900",
});

/** Every page knows its reader, and carries its own nonce. */
export const dynamic = "force-dynamic";

export const metadata: Metadata = {
  title: { default: "Sizewright", template: "%s · Sizewright" },
  description: "Find out which sizes of a crochet or knitting pattern came out as promised, and why.",
  icons: {
    icon: [
      { url: "/favicon.ico", sizes: "32x32" },
      { url: "/icon.svg", type: "image/svg+xml" },
    ],
    apple: "/apple-touch-icon.png",
  },
  manifest: "/site.webmanifest",
};

/** The paper's colour, for what the browser draws around a page. */
export const viewport: Viewport = { themeColor: "#f6f0e4" };

export default function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en" className={`${sans.variable} ${serif.variable}`}>
      <body className="flex min-h-dvh flex-col">
        <SiteHeader menu={<AccountMenu />} />
        {children}
      </body>
    </html>
  );
}
