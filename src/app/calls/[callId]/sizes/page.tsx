import type { Metadata } from "next";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { PlacesView } from "@/features/recruiting/places/components/places-view";
import { loadPlaces } from "@/features/recruiting/places/loaders";
import { placesQuerySchema } from "@/features/recruiting/places/schema";

export const metadata: Metadata = { title: CALL_PAGES.sizes.name };

export default async function PlacesPage({ params, searchParams }: PageProps<"/calls/[callId]/sizes">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, call, mayEdit, revision, viewer } = loaded;
  const query = placesQuerySchema.parse(await searchParams);
  const places = await loadPlaces(access, { query, pattern: revision.document, from: viewer.name });
  const considering = query.with ?? places.loaded?.considering ?? "yes";
  const download = (
    <a href={`/calls/${callId}/sizes/export?with=${considering}`} className="text-link">
      Export applicants
    </a>
  );
  return (
    <CallPage loaded={loaded} page="sizes" actions={download}>
      <PlacesView
        places={places}
        pattern={revision.document}
        call={{ callId, mayEdit, isOpen: call.status === "open" }}
        unit={viewer.unit}
        query={query}
      />
    </CallPage>
  );
}
