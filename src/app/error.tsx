"use client";

import { Button } from "@/ui/button";
import { Page } from "@/ui/page";

interface ErrorPageProps {
  readonly error: Error & { readonly digest?: string };
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

const UNKNOWN: Message = {
  title: "Something went wrong here",
  intro: "It is not your doing. Nothing that was saved is lost.",
};

export default function ErrorPage({ error: { digest } }: ErrorPageProps) {
  const known = digest === undefined ? undefined : KNOWN[digest];
  const { title, intro } = known ?? UNKNOWN;
  return (
    <Page title={title} intro={intro} width="narrow">
      <Button onClick={() => window.location.reload()}>Try again</Button>
      {known !== undefined || digest === undefined ? null : (
        <p className="mt-6 text-sm text-soft">If it happens again, this number helps to find out why: {digest}</p>
      )}
    </Page>
  );
}
