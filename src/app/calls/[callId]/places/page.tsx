import type { Metadata } from "next";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { PlacesView } from "@/features/places/components/places-view";
import { invitationViews } from "@/features/places/invitation-views";
import { loadPlaces } from "@/features/places/loaders";
import { placingName } from "@/features/places/placing";
import { placesQuerySchema } from "@/features/places/schema";

export const metadata: Metadata = { title: "Places" };

export default async function PlacesPage({ params, searchParams }: PageProps<"/calls/[callId]/places">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, call, mayEdit, viewer } = loaded;
  const query = placesQuerySchema.parse(await searchParams);
  const places = await loadPlaces(access, query);
  const download = (
    <a href={`/calls/${callId}/places/export?with=${places.considering}`} className="text-link">
      Export the applicants
    </a>
  );
  return (
    <CallPage loaded={loaded} tab="places" title="Who tests which size" actions={download}>
      <PlacesView
        loaded={places}
        call={{ callId, mayEdit, isOpen: call.status === "open" }}
        unit={viewer.unit}
        query={query}
        invitations={invitationViews(places.rows, { ...places, from: viewer.name, page: query.invited ?? 1 })}
        saw={placingName(places.board.placed)}
      />
    </CallPage>
  );
}
