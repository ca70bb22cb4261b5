"use client";

import { FailedPage, type FailedPageProps } from "@/ui/failed-page";

export default function ErrorPage({ error }: Pick<FailedPageProps, "error">) {
  return <FailedPage error={error} intro="Nothing that was saved is lost." />;
}
