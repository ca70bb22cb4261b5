import type { PatternDocument } from "@/engine/pattern";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { WatchFor } from "@/ui/watch-for";
import type { LoadedBoard, LoadedPlaces } from "../loaders";
import { placesHref } from "../places-href";
import type { PlacingStatus } from "../placing-data";
import type { PlacesQuery } from "../schema";
import { FreePlacesSection } from "./free-places-section";
import { InvitationsNeeded } from "./invitations-needed";
import { InvitationsSection } from "./invitations-section";
import { LeftOut } from "./left-out";
import { PlacesEmpty, placesMissing } from "./places-empty";
import type { PlacesFrame } from "./places-frame";
import { PlacingTable } from "./placing-table";
import { RulerSection } from "./ruler-section";
import { SendPanel } from "./send-panel";
import { ShortSizes } from "./short-sizes";
import { SolvePanel } from "./solve-panel";
import { WaitingTable } from "./waiting-table";

interface PlacesViewProps {
  readonly places: LoadedPlaces;
  readonly pattern: PatternDocument;
  readonly call: { readonly callId: string; readonly mayEdit: boolean; readonly isOpen: boolean };
  readonly unit: PlacesFrame["unit"];
  readonly query: PlacesQuery;
}

/** Who gets which size: solved, looked at, settled by hand, sent, and filled again where somebody left. */
export function PlacesView({ places, pattern, call, unit, query }: PlacesViewProps) {
  const { status, loaded } = places;
  const { callId } = call;
  const state = <PlacingState callId={callId} status={status} isShown={loaded !== null} />;
  if (loaded === null) return state;
  const missing = placesMissing(places, loaded);
  if (missing !== null)
    return (
      <>
        {state}
        <PlacesEmpty {...{ callId, missing }} applicants={loaded.board.applicants} />
      </>
    );
  const frame = frameOf(loaded, { pattern, call, unit, query });
  return (
    <>
      {call.isOpen ? null : <Notice>This call is closed: places stay as they are.</Notice>}
      {state}
      <Board {...{ places, loaded, frame }} />
      <InvitationsSection
        callId={callId}
        page={places.invitations}
        sent={query.sent ?? null}
        mayEdit={call.mayEdit}
        hrefOf={(invited) => `${frame.hrefWith({ invited })}#invitations`}
      />
    </>
  );
}

interface PlacingStateProps {
  readonly callId: string;
  readonly status: PlacingStatus;
  /** Something is shown that was calculated before. */
  readonly isShown: boolean;
}

/** Whether what the page shows is of the applications, testers and sizes as they are now. */
function PlacingState({ callId, status, isShown }: PlacingStateProps) {
  switch (status) {
    case "current":
      return null;
    case "updating":
      return (
        <Notice title={isShown ? "Updating" : "Calculating who fits which size"}>
          <p>
            {isShown
              ? "Applications, testers or sizes have changed. What you see is from before; this page shows the new state as soon as it is there."
              : "This page shows the sizes and testers as soon as they are there."}
          </p>
          <WatchFor address={`/calls/${callId}/places/state`} />
        </Notice>
      );
    case "failed":
      return (
        <Notice tone="problem" title="Who fits which size cannot be calculated">
          The pattern or an application cannot be read; all of them are kept. Save the pattern again, or tell whoever
          runs Sizewright. It is calculated again with the next change.
        </Notice>
      );
  }
}

interface BoardProps {
  readonly places: LoadedPlaces;
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
}

function Board({ places, loaded, frame }: BoardProps) {
  const { board, side, people } = loaded;
  const isFirst = board.waitingFrom === 0;
  const measurement = board.fitBy.find((id) => id === frame.query.by) ?? board.fitBy[0];
  return (
    <>
      <div className="mb-8 grid items-start gap-x-10 gap-y-6 lg:grid-cols-[1fr_24rem]">
        <SolvePanel
          {...{ people, isFirst }}
          callId={frame.callId}
          hrefOf={(considering) => frame.hrefWith({ with: considering })}
          mayAct={frame.mayAct}
          considering={loaded.considering}
          counts={{ yes: board.yes.considered, maybe: board.maybe.considered }}
          wouldMove={side.wouldMove}
        />
        <InvitationsNeeded sizes={board.sizes} loss={places.loss} />
      </div>
      <FreePlacesSection {...{ places, loaded, frame }} />
      {measurement === undefined ? (
        <Notice>This call asks for no body measurement that decides the size, so nobody’s fit is known.</Notice>
      ) : (
        <RulerSection {...{ loaded, frame, measurement }} hrefOf={(id) => frame.hrefWith({ by: id })} />
      )}
      {isFirst ? null : <WhoStandsWhere {...{ loaded, frame }} />}
      {side.waiting > 0 ? (
        <Section title={isFirst ? "Who can be placed" : "Who is waiting"}>
          <WaitingTable {...{ loaded, frame }} />
        </Section>
      ) : null}
      <LeftOut {...{ loaded, frame }} />
      <SendPanel
        {...{ loaded, frame }}
        endsOn={places.endsOn}
        timeZone={places.timeZone}
        isAsSolved={side.wouldMove?.many === 0}
      />
    </>
  );
}

function WhoStandsWhere({ loaded, frame }: { readonly loaded: LoadedBoard; readonly frame: PlacesFrame }) {
  return (
    <>
      <Section
        title="Who stands where"
        intro="Close: on the average within a quarter of the way to the next size. Fair: no other size is nearer. Far: another size is nearer. The number is the misfit with her wishes; 0 is a perfect fit."
      >
        <PlacingTable {...{ loaded, frame }} />
      </Section>
      <ShortSizes loaded={loaded} measurements={frame.measurements} unit={frame.unit} />
    </>
  );
}

function frameOf(
  { board }: LoadedBoard,
  { pattern, call, unit, query }: Pick<PlacesViewProps, "pattern" | "call" | "unit" | "query">,
): PlacesFrame {
  const labels = new Map((pattern.bodyMeasurements ?? []).map(({ id, label }) => [id, label]));
  return {
    ...{ callId: call.callId, mayAct: call.mayEdit && call.isOpen, unit },
    measurements: board.fitBy.map((id) => labels.get(id) ?? id.replaceAll("-", " ")),
    sizeChoices: pattern.sizes.map(({ id, label }) => ({ id, label })),
    query,
    hrefWith: (change) => placesHref(call.callId, { ...query, ...change }),
  };
}
