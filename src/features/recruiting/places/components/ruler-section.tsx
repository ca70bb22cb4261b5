import { ChoiceLinks } from "@/ui/choice-links";
import { Section } from "@/ui/section";
import type { LoadedBoard } from "../loaders";
import type { PersonMark } from "../stored-board";
import { BodyRuler } from "./body-ruler";
import { MARK_WORDS, PersonShape } from "./person-shape";
import type { RulerPerson } from "./ruler-layout";
import { marksOn, personSays, rulerDescription, rulerOfBoard } from "./ruler-of-board";
import type { PlacesFrame } from "./places-frame";

interface RulerSectionProps {
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
  /** The measurement that the ruler is of; one of those that decide the fit. */
  readonly measurement: string;
  /** This page's address with another measurement. */
  readonly hrefOf: (measurement: string) => string;
}

/** The ruler of bodies with its legend, and the choice of another measurement. */
export function RulerSection({ loaded, frame, measurement, hrefOf }: RulerSectionProps) {
  const { unit } = frame;
  const { fitBy } = loaded.board;
  const label = frame.measurements[fitBy.indexOf(measurement)] ?? measurement;
  const ruler = rulerOfBoard(loaded, { measurement, unit });
  if (ruler.sizes.length === 0) return null;
  const labelOf = (id: string) => loaded.people.words.size(id);
  const says = (person: RulerPerson) => personSays(person, { unit, labelOf });
  return (
    <Section
      title={`Applicants and sizes by ${label.toLowerCase()}`}
      intro={
        ruler.bars !== null
          ? "Each bar shows how many people have this measurement; lines lead to their sizes. The band behind a size shows which bodies it fits."
          : "Each person is at their measurement; a line leads to their size. The band behind a size shows which bodies it fits."
      }
      actions={
        fitBy.length > 1 ? (
          <ChoiceLinks
            label="Measurement"
            choices={fitBy.map((id, index) => ({
              href: hrefOf(id),
              label: frame.measurements[index] ?? id,
              current: id === measurement,
            }))}
          />
        ) : null
      }
    >
      <BodyRuler
        title={`${label} of everyone, and the sizes`}
        description={rulerDescription(ruler, says)}
        unit={unit}
        {...ruler}
        says={says}
      />
      <Legend marks={marksOn(ruler)} />
    </Section>
  );
}

function Legend({ marks }: { readonly marks: ReadonlySet<PersonMark> }) {
  const shown = (["placed", "locked", "invited", "waiting"] as const).filter((mark) => marks.has(mark));
  return (
    <ul className="mt-3 flex flex-wrap gap-x-6 gap-y-1 text-sm">
      {shown.map((mark) => (
        <li key={mark} className="flex items-center gap-2">
          <svg width="16" height="16" aria-hidden="true">
            <svg x="8" y="8" overflow="visible">
              <PersonShape mark={mark} r={5.5} />
            </svg>
          </svg>
          {MARK_WORDS[mark]}
        </li>
      ))}
    </ul>
  );
}
