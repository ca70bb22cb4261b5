"use client";

import { Button } from "@/ui/button";
import { Page } from "@/ui/page";

interface ErrorPageProps {
  readonly error: Error & { readonly digest?: string };
}

export default function ErrorPage({ error }: ErrorPageProps) {
  const away = error.digest === "database-away";
  return (
    <Page
      title={away ? "The database does not answer just now" : "Something went wrong here"}
      intro={
        away
          ? "Nothing that was saved is lost. It usually comes back within a minute, and then so does this page."
          : "It is not your doing. Nothing that was saved is lost."
      }
      width="narrow"
    >
      <Button onClick={() => window.location.reload()}>Try again</Button>
      {away || error.digest === undefined ? null : (
        <p className="mt-6 text-sm text-soft">If it happens again, this number helps to find out why: {error.digest}</p>
      )}
    </Page>
  );
}
