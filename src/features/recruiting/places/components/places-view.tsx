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
import { NoSpotSection } from "./no-spot-section";
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

/** Who gets which size: assign, review, adjust by hand, invite, and refill spots. */
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
      {call.isOpen ? null : <Notice>This test is closed. Sizes can’t be changed any more.</Notice>}
      {state}
      <Board {...{ places, loaded, frame }} />
      <InvitationsSection
        callId={callId}
        page={places.invitations}
        sent={query.sent ?? null}
        mayEdit={call.mayEdit}
        hrefOf={(invited) => `${frame.hrefWith({ invited })}#invitations`}
      />
      {places.invitations.invitations.length === 0 ? null : <NoSpotSection callId={callId} untold={places.untold} />}
    </>
  );
}

interface PlacingStateProps {
  readonly callId: string;
  readonly status: PlacingStatus;
  /** An earlier result is shown. */
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
              ? "Applications, testers or sizes have changed. You see the previous state; the new one appears here as soon as it is ready."
              : "Sizes and testers appear here as soon as they are ready."}
          </p>
          <WatchFor address={`/calls/${callId}/sizes/state`} />
        </Notice>
      );
    case "failed":
      return (
        <Notice tone="problem" title="Who fits which size cannot be calculated">
          The pattern or an application cannot be read. Nothing is lost. Save the pattern again, or tell the person who
          runs Sizewright. The next change starts a new calculation.
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
        <Notice>Applicants are not asked for a measurement that decides the size, so nobody’s fit is known.</Notice>
      ) : (
        <RulerSection {...{ loaded, frame, measurement }} hrefOf={(id) => frame.hrefWith({ by: id })} />
      )}
      {isFirst ? null : <WhoStandsWhere {...{ loaded, frame }} />}
      {side.waiting > 0 ? (
        <Section title={isFirst ? "Applicants to assign" : "Who is waiting"}>
          <WaitingTable {...{ loaded, frame }} />
        </Section>
      ) : null}
      <LeftOut {...{ loaded, frame }} />
      <SendPanel
        {...{ loaded, frame }}
        endsOn={places.endsOn}
        timeZone={places.timeZone}
        isAsSolved={side.wouldMove?.many === 0}
        isMailed={places.invitations.isMailed}
      />
    </>
  );
}

function WhoStandsWhere({ loaded, frame }: { readonly loaded: LoadedBoard; readonly frame: PlacesFrame }) {
  return (
    <>
      <Section
        title="Sizes and testers"
        intro="Close: on average within a quarter of the step to the next size. Fair: no other size is closer. Far: another size is closer. The number combines fit and preferences; 0 is a perfect match."
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
