import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { countConsidered } from "../applicants-document";
import type { InvitationPage } from "../invitation-views";
import type { LoadedPlaces } from "../loaders";
import { placesHref } from "../places-href";
import type { PlacesQuery } from "../schema";
import { FreePlacesSection } from "./free-places-section";
import { InvitationsNeeded } from "./invitations-needed";
import { InvitationsSection } from "./invitations-section";
import { LeftOut } from "./left-out";
import { PlacesEmpty, placesMissing } from "./places-empty";
import { PlacingTable, type PlacesFrame } from "./placing-table";
import { RulerSection } from "./ruler-section";
import { SendPanel } from "./send-panel";
import { ShortSizes } from "./short-sizes";
import { SolvePanel } from "./solve-panel";
import { WaitingTable } from "./waiting-table";

interface PlacesViewProps {
  readonly loaded: LoadedPlaces;
  readonly call: { readonly callId: string; readonly mayEdit: boolean; readonly isOpen: boolean };
  readonly unit: PlacesFrame["unit"];
  readonly query: PlacesQuery;
  readonly invitations: InvitationPage;
  /** Names the placing that stands on the page. */
  readonly saw: string;
}

/** Who gets which size: solved, looked at, settled by hand, sent, and filled again where somebody left. */
export function PlacesView({ loaded, call, unit, query, invitations, saw }: PlacesViewProps) {
  const { rows, board } = loaded;
  const { callId } = call;
  const missing = placesMissing(loaded);
  if (missing !== null) return <PlacesEmpty {...{ callId, missing }} applicants={rows.applicants.length} />;
  const frame = frameOf(loaded, { call, unit, query });
  const labelOf = (id: string) => board.sizes.find((size) => size.id === id)?.label ?? id;
  const { fitBy } = board.question;
  const isFirst = board.sizes.every(({ people }) => people.length === 0);
  const measurement = fitBy.find((id) => id === query.by) ?? fitBy[0];
  return (
    <>
      {call.isOpen ? null : <Notice>This call is closed: places stay as they are.</Notice>}
      <div className="mb-8 grid items-start gap-x-10 gap-y-6 lg:grid-cols-[1fr_24rem]">
        <SolvePanel
          {...{ callId, labelOf, isFirst }}
          hrefOf={(considering) => frame.hrefWith({ with: considering })}
          mayAct={frame.mayAct}
          considering={loaded.considering}
          counts={{ yes: countConsidered(rows, "yes"), maybe: countConsidered(rows, "maybe") }}
          wouldMove={board.wouldMove}
        />
        <InvitationsNeeded sizes={board.sizes} loss={loaded.loss} />
      </div>
      <FreePlacesSection {...{ loaded, frame }} />
      {measurement === undefined ? (
        <Notice>This call asks for no body measurement that decides the size, so nobody’s fit is known.</Notice>
      ) : (
        <RulerSection {...{ board, frame, measurement }} hrefOf={(id) => frame.hrefWith({ by: id })} />
      )}
      {isFirst ? null : <WhoStandsWhere {...{ loaded, frame }} />}
      {board.waiting.length > 0 ? (
        <Section title={isFirst ? "Who can be placed" : "Who is waiting"}>
          <WaitingTable people={board.waiting} measurementIds={board.question.fitBy} frame={frame} />
        </Section>
      ) : null}
      <LeftOut {...{ loaded, frame }} />
      <SendPanel
        {...{ callId, saw }}
        sizes={board.sizes}
        endsOn={loaded.endsOn}
        timeZone={loaded.timeZone}
        isAsSolved={board.wouldMove?.length === 0}
        mayAct={frame.mayAct}
      />
      <InvitationsSection
        callId={callId}
        page={invitations}
        sent={query.sent ?? null}
        mayEdit={call.mayEdit}
        hrefOf={(invited) => `${frame.hrefWith({ invited })}#invitations`}
      />
    </>
  );
}

function WhoStandsWhere({ loaded, frame }: { readonly loaded: LoadedPlaces; readonly frame: PlacesFrame }) {
  const { board } = loaded;
  const shown = board.sizes.filter(({ wanted, people }) => wanted > 0 || people.length > 0);
  return (
    <>
      <Section
        title="Who stands where"
        intro="Close: on the average within a quarter of the way to the next size. Fair: no other size is nearer. Far: another size is nearer. The number is the misfit with her wishes; 0 is a perfect fit."
      >
        <PlacingTable sizes={shown} frame={frame} />
      </Section>
      <ShortSizes sizes={board.sizes} measurements={frame.measurements} unit={frame.unit} />
    </>
  );
}

function frameOf(
  { rows, board }: LoadedPlaces,
  { call, unit, query }: Pick<PlacesViewProps, "call" | "unit" | "query">,
): PlacesFrame {
  const labels = new Map((rows.pattern.bodyMeasurements ?? []).map(({ id, label }) => [id, label]));
  return {
    ...{ callId: call.callId, mayAct: call.mayEdit && call.isOpen, unit },
    measurements: board.question.fitBy.map((id) => labels.get(id) ?? id.replaceAll("-", " ")),
    sizeChoices: rows.pattern.sizes.map(({ id, label }) => ({ id, label })),
    query,
    hrefWith: (change) => placesHref(call.callId, { ...query, ...change }),
  };
}
