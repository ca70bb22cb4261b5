import type { Metadata } from "next";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { photoSheetQuerySchema } from "@/features/testing/photos/photo-schema";
import { PhotoSheet } from "@/features/testing/photos/photo-sheet";
import { openWithdrawals, readSheetPhotos } from "@/features/testing/photos/photo-sheet-data";
import { WithdrawalList } from "@/features/testing/photos/withdrawal-list";

export const metadata: Metadata = { title: CALL_PAGES.photos.name };

export default async function PhotosPage({ params, searchParams }: PageProps<"/calls/[callId]/photos">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, revision, mayEdit } = loaded;
  const [photos, withdrawals] = await Promise.all([readSheetPhotos(access), openWithdrawals(access)]);
  await noteSeen(access, { kind: "photos", testers: photos.map(({ testerId }) => testerId) });
  const query = photoSheetQuerySchema.parse(await searchParams);
  return (
    <CallPage loaded={loaded} page="photos">
      <WithdrawalList {...{ callId, withdrawals, mayEdit }} />
      <PhotoSheet {...{ callId, photos, query, mayEdit }} sizes={revision.document.sizes} />
    </CallPage>
  );
}
