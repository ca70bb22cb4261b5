"use client";

import { useParams } from "next/navigation";
import { ButtonLink } from "@/ui/button";
import { FailedPage, type FailedPageProps } from "@/ui/failed-page";

export default function PatternError({ error }: Pick<FailedPageProps, "error">) {
  const { patternId } = useParams<{ patternId: string }>();
  return (
    <FailedPage error={error} intro="Saved revisions are safe, and so are your edits.">
      <ButtonLink href={`/patterns/${patternId}`} look="quiet">
        Overview of this pattern
      </ButtonLink>
    </FailedPage>
  );
}
