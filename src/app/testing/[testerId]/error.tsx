"use client";

import { useParams } from "next/navigation";
import { ButtonLink } from "@/ui/button";
import { FailedPage, type FailedPageProps } from "@/ui/failed-page";

export default function TesterError({ error }: Pick<FailedPageProps, "error">) {
  const { testerId } = useParams<{ testerId: string }>();
  return (
    <FailedPage error={error} intro="What you entered is safe: it is saved, or stays on this device until it can be.">
      <ButtonLink href={`/testing/${testerId}`} look="quiet">
        Overview of your test
      </ButtonLink>
    </FailedPage>
  );
}
