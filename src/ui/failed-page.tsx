"use client";

import type { ReactNode } from "react";
import { Button } from "./button";
import { Page } from "./page";

export interface FailedPageProps {
  readonly error: Error & { readonly digest?: string };
  /** What is safe, where nothing more is known of the failure. */
  readonly intro: string;
  /** Ways on, beside trying again. */
  readonly children?: ReactNode;
}

interface Message {
  readonly title: string;
  readonly intro: string;
}

/** Failures that people can be told about, by the mark that the server puts on them. */
const KNOWN: Readonly<Record<string, Message>> = {
  "database-away": {
    title: "The database does not answer just now",
    intro: "Nothing that was saved is lost. It usually comes back within a minute, and then so does this page.",
  },
};

/** In the place of a page that could not be drawn. */
export function FailedPage({ error: { digest }, intro, children }: FailedPageProps) {
  const known = digest === undefined ? undefined : KNOWN[digest];
  return (
    <Page
      title={known?.title ?? "Something went wrong here"}
      intro={known?.intro ?? `It is not your doing. ${intro}`}
      width="narrow"
    >
      <div className="flex flex-wrap items-center gap-3">
        <Button onClick={() => window.location.reload()}>Try again</Button>
        {children}
      </div>
      {known !== undefined || digest === undefined ? null : (
        <p className="mt-6 text-sm text-soft">If it happens again, this number helps to find out why: {digest}</p>
      )}
    </Page>
  );
}
