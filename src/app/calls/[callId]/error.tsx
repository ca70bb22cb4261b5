"use client";

import { useParams } from "next/navigation";
import { ButtonLink } from "@/ui/button";
import { FailedPage, type FailedPageProps } from "@/ui/failed-page";

export default function CallError({ error }: Pick<FailedPageProps, "error">) {
  const { callId } = useParams<{ callId: string }>();
  return (
    <FailedPage error={error} intro="Reports, decisions and all else that was saved are safe.">
      <ButtonLink href={`/calls/${callId}`} look="quiet">
        Overview of this test
      </ButtonLink>
    </FailedPage>
  );
}
