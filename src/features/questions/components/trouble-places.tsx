import type { PatternDocument } from "@/engine/pattern";
import { FoldedRest } from "@/ui/folded-rest";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import type { CallTrouble } from "../data";
import { groupByPlace, type PlaceGroup } from "../group-by-place";
import { QuotedPlace } from "./quoted-place";
import { SaidBy, sizeLabel } from "./said-by";

interface TroublePlacesProps {
  readonly troubles: readonly CallTrouble[];
  readonly pattern: PatternDocument;
}

/** Of more at one place the rest is folded, so that the next place is in sight. */
const MOST_SHOWN = 5;

/** Where testers stumbled over the text, place by place, the one where most did first. */
export function TroublePlaces({ troubles, pattern }: TroublePlacesProps) {
  const groups = groupByPlace(pattern.instructions ?? "", troubles)
    .map((group) => ({ group, testers: new Set(group.said.map(({ testerCode }) => testerCode)).size }))
    .toSorted((left, right) => right.testers - left.testers);
  return (
    <Section
      title="Trouble spots in the text"
      intro="Places of the instructions where something went wrong: what happened there, and what was done about it."
    >
      {groups.length === 0 ? (
        <p className="text-soft">No tester has told of a place where something went wrong.</p>
      ) : (
        <ol className="grid grid-cols-1 gap-6">
          {groups.map(({ group, testers }) => (
            <li key={group.key}>
              <TroublePlace {...{ group, testers, pattern }} />
            </li>
          ))}
        </ol>
      )}
    </Section>
  );
}

interface TroublePlaceProps {
  readonly group: PlaceGroup<CallTrouble>;
  readonly testers: number;
  readonly pattern: PatternDocument;
}

function TroublePlace({ group: { block, said }, testers, pattern }: TroublePlaceProps) {
  const [first] = said;
  if (first === undefined) return null;
  const was = { words: first.place.words, revisionNumber: first.revisionNumber };
  return (
    <Sheet>
      <p className="mb-4 font-semibold">
        {testers === 1 ? "1 tester" : `${testers} testers`} stumbled here{" "}
        <span className="font-normal text-soft">in {sizesOfSaid(said, pattern)}</span>
      </p>
      <div className="grid grid-cols-1 gap-x-10 gap-y-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,3fr)]">
        <QuotedPlace text={pattern.instructions ?? ""} block={block} was={was} />
        <FoldedRest
          className="grid content-start gap-4"
          shown={MOST_SHOWN}
          of="trouble spots"
          items={said.map((trouble) => (
            <li key={trouble.troubleId}>
              <p dir="auto" className="whitespace-pre-line wrap-anywhere">
                {trouble.happened}
              </p>
              {trouble.did === "" ? null : (
                <p dir="auto" className="mt-1 whitespace-pre-line wrap-anywhere">
                  <span className="text-soft">What was done: </span>
                  {trouble.did}
                </p>
              )}
              <SaidBy said={trouble} pattern={pattern} />
            </li>
          ))}
        />
      </div>
    </Sheet>
  );
}

/** `S, M and 2X`, each with how many where there are several. */
function sizesOfSaid(said: readonly CallTrouble[], pattern: PatternDocument): string {
  const bySize = pattern.sizes.flatMap(({ id }) => {
    const testers = new Set(said.filter(({ tester }) => tester?.size === id).map(({ testerCode }) => testerCode)).size;
    return testers === 0 ? [] : [testers === 1 ? sizeLabel(pattern, id) : `${sizeLabel(pattern, id)} (${testers})`];
  });
  return new Intl.ListFormat("en-GB").format(bySize);
}
