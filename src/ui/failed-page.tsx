"use client";

import type { ReactNode } from "react";
import { Button } from "./button";
import { Page } from "./page";

export interface FailedPageProps {
  readonly error: Error & { readonly digest?: string };
  /** What is safe, where nothing more is known about the failure. */
  readonly intro: string;
  /** Ways on, beside trying again. */
  readonly children?: ReactNode;
}

interface Message {
  readonly title: string;
  readonly intro: string;
}

/** Failures with a message for people, by the mark that the server sets. */
const KNOWN: Readonly<Record<string, Message>> = {
  "database-away": {
    title: "The database is not responding",
    intro: "Everything you saved is safe. The database is usually back within a minute; this page then loads again.",
  },
};

/** Shown instead of a page that could not be drawn. */
export function FailedPage({ error: { digest }, intro, children }: FailedPageProps) {
  const known = digest === undefined ? undefined : KNOWN[digest];
  return (
    <Page
      title={known?.title ?? "Something went wrong"}
      intro={known?.intro ?? `This is not your fault. ${intro}`}
      width="narrow"
    >
      <div className="flex flex-wrap items-center gap-3">
        <Button onClick={() => window.location.reload()}>Try again</Button>
        {children}
      </div>
      {known !== undefined || digest === undefined ? null : (
        <p className="mt-6 text-sm text-soft">If it happens again, report this number: {digest}</p>
      )}
    </Page>
  );
}
