import { fitInSize } from "@/engine/places";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import type { FreePlaces } from "../free-places";
import { fitWord } from "../fit-words";
import type { LoadedPlaces } from "../loaders";
import { FillForm, type FillChoice } from "./fill-form";
import type { PlacesFrame } from "./placing-table";
import { bodyWords } from "./short-sizes";
import { STATE_WORDS } from "./standing-words";

/** More than this cannot be weighed against each other. */
const MOST_CHOICES = 5;

/** Of more who left a size, only how many. */
const MOST_LEFT = 10;

/** Places that fell free, and who of those waiting fits best; nobody else moves. */
export function FreePlacesSection({ loaded, frame }: { readonly loaded: LoadedPlaces; readonly frame: PlacesFrame }) {
  if (loaded.free.length === 0) return null;
  return (
    <Section
      title="Places that are free again"
      intro="Somebody from those waiting can come in, with days of her own. Nobody else is moved, and what was sent by whoever left stays."
    >
      <div className="grid gap-4">
        {loaded.free.map((free) => (
          <FreePlace key={free.size} {...{ free, loaded, frame }} />
        ))}
      </div>
    </Section>
  );
}

interface FreePlaceProps {
  readonly free: FreePlaces;
  readonly loaded: LoadedPlaces;
  readonly frame: PlacesFrame;
}

function FreePlace({ free, loaded, frame }: FreePlaceProps) {
  const { size, label, left } = free;
  const choices = choicesOf({ free, loaded, frame });
  return (
    <Sheet>
      <h3 className="mb-1">
        {free.free === 1 ? "1 place" : `${free.free} places`} in {label} {free.free === 1 ? "is" : "are"} free again
      </h3>
      <p className="mb-4 text-soft wrap-anywhere">
        {left.slice(0, MOST_LEFT).map(({ name, state }, at) => (
          <span key={at}>
            {at > 0 ? " · " : null}
            <bdi>{name}</bdi>: {STATE_WORDS[state].toLowerCase()}
          </span>
        ))}
        {left.length > MOST_LEFT ? ` · and ${left.length - MOST_LEFT} more` : null}
      </p>
      {choices.length === 0 ? (
        <p>Nobody who waits can take it: no body is within reach of {label}, or it is not accepted.</p>
      ) : frame.mayAct && loaded.laterDates !== null ? (
        <FillForm
          {...{ size, choices }}
          callId={frame.callId}
          sizeLabel={label}
          dates={loaded.laterDates}
          endsOn={loaded.endsOn}
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

function choicesOf({ free, loaded, frame }: FreePlaceProps): FillChoice[] {
  const { question } = loaded.board;
  return free.successors.slice(0, MOST_CHOICES).flatMap(({ applicant: code, reason }) => {
    const waiting = loaded.board.waiting.find((person) => person.applicant?.code === code);
    const applicant = question.applicants.find(({ id }) => id === code);
    if (waiting === undefined || applicant === undefined) return [];
    const fit = fitInSize({ document: question, applicant, size: free.size });
    const wish = reason.isFirstChoice ? ", her 1st choice" : "";
    const says = `${bodyWords(fit, frame.measurements, frame.unit)}: ${fitWord(fit.bodyMisfit, frame.measurements.length)} (${fit.misfit.toFixed(2)})${wish}`;
    return [{ applicationId: waiting.key, name: waiting.name, says }];
  });
}
