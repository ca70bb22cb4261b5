"use client";

import ErrorPage from "./error";
import "./globals.css";

interface GlobalErrorProps {
  readonly error: Error & { readonly digest?: string };
}

/** Stands in for the whole document when the frame of the pages itself failed. */
export default function GlobalError({ error }: GlobalErrorProps) {
  return (
    <html lang="en">
      <body className="flex min-h-dvh flex-col">
        <title>Something went wrong · Sizewright</title>
        <ErrorPage error={error} />
      </body>
    </html>
  );
}
