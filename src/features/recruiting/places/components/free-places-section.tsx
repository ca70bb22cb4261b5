import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { fitWord } from "../fit-copy";
import type { LoadedBoard, LoadedPlaces } from "../loaders";
import type { StoredSide } from "../stored-board";
import { FillForm, type FillChoice } from "./fill-form";
import type { PlacesFrame } from "./places-frame";
import { bodyWords } from "./short-sizes";
import { STATE_WORDS } from "./standing-copy";

interface FreePlacesSectionProps {
  readonly places: LoadedPlaces;
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
}

/** Spots that have opened up, and the waiting applicants who fit best; nobody else moves. */
export function FreePlacesSection({ places, loaded, frame }: FreePlacesSectionProps) {
  const { free } = loaded.side;
  if (free.length === 0) return null;
  return (
    <Section
      title="Open spots"
      intro="You can invite a waiting applicant with their own dates. Nobody else is moved, and reports from testers who left stay."
    >
      <div className="grid gap-4">
        {free.map((each) => (
          <FreePlace key={each.size} free={each} {...{ places, loaded, frame }} />
        ))}
      </div>
    </Section>
  );
}

interface FreePlaceProps extends FreePlacesSectionProps {
  readonly free: StoredSide["free"][number];
}

function FreePlace({ free, places, loaded, frame }: FreePlaceProps) {
  const { size, left } = free;
  const { people } = loaded;
  const label = people.words.size(size);
  const choices = choicesOf({ free, loaded, frame });
  return (
    <Sheet>
      <h3 className="mb-1">
        {free.free === 1 ? "1 open spot" : `${free.free} open spots`} in {label}
      </h3>
      <p className="mb-4 text-soft wrap-anywhere">
        {left.first.map((testerId, index) => (
          <span key={testerId}>
            {index > 0 ? " · " : null}
            <bdi>{people.nameOf(testerId)}</bdi>: {STATE_WORDS[people.stateOf(testerId) ?? "stopped"].toLowerCase()}
          </span>
        ))}
        {left.many > left.first.length ? ` · and ${left.many - left.first.length} more` : null}
      </p>
      {choices.length === 0 ? (
        <p>No waiting applicant can take it: {label} doesn’t fit them, or they didn’t accept this size.</p>
      ) : frame.mayAct && places.laterDates !== null ? (
        <FillForm
          {...{ size, choices }}
          callId={frame.callId}
          sizeLabel={label}
          dates={places.laterDates}
          endsOn={places.endsOn}
        />
      ) : (
        <ul>
          {choices.map(({ applicationId, name, says }) => (
            <li key={applicationId} className="wrap-anywhere">
              <bdi className="font-semibold">{name}</bdi> <span className="text-soft">{says}</span>
            </li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}

function choicesOf({ free, loaded: { people }, frame }: Omit<FreePlaceProps, "places">): FillChoice[] {
  return free.successors.flatMap(({ application, isFirstChoice }) => {
    const waiting = people.find(application);
    const fit = people.fitOf(application, free.size);
    if (waiting === null || fit === null) return [];
    const wish = isFirstChoice ? ", their 1st choice" : "";
    const says = `${bodyWords(fit, frame.measurements, frame.unit)}: ${fitWord(fit.bodyMisfit, frame.measurements.length)} (${fit.misfit.toFixed(2)})${wish}`;
    return [{ applicationId: application, name: waiting.name, says }];
  });
}
