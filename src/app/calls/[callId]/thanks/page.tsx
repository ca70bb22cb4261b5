import type { Metadata } from "next";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { creditNames, readThanks } from "@/features/testing/thanks/thanks-data";
import { thanksQuerySchema } from "@/features/testing/thanks/thanks-schema";
import { ThanksView } from "@/features/testing/thanks/thanks-view";

export const metadata: Metadata = { title: CALL_PAGES.thanks.name };

export default async function ThanksPage({ params, searchParams }: PageProps<"/calls/[callId]/thanks">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, mayEdit } = loaded;
  const { page, order } = thanksQuerySchema.parse(await searchParams);
  const pattern = loaded.revision.document;
  const [thanks, names] = await Promise.all([
    readThanks(access, page),
    creditNames(access, { order, sizes: pattern.sizes }),
  ]);
  return (
    <CallPage loaded={loaded} page="thanks">
      <ThanksView {...{ callId, thanks, names, order, pattern, mayEdit }} />
    </CallPage>
  );
}
