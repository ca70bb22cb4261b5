import { ChoiceLinks } from "@/ui/choice-links";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { solvePlaces } from "../actions";
import type { BoardPeople } from "../board-people";
import type { Considering, StoredSide } from "../stored-placing";

interface SolvePanelProps {
  readonly callId: string;
  readonly mayAct: boolean;
  readonly considering: Considering;
  /** How many are considered with a yes alone, and with a maybe too. */
  readonly counts: Readonly<Record<Considering, number>>;
  readonly wouldMove: StoredSide["wouldMove"];
  readonly people: BoardPeople;
  /** Nobody stands in a size yet. */
  readonly isFirst: boolean;
  /** This page's address where a maybe is enough, and where it is not. */
  readonly hrefOf: (considering: Considering) => string;
}

/** Whom places are given to, whether what stands is what solving gives, and the button that solves. */
export function SolvePanel(props: SolvePanelProps) {
  const { callId, mayAct, considering, counts, wouldMove, people, isFirst, hrefOf } = props;
  return (
    <div>
      <div className="mb-4 flex flex-wrap items-center gap-x-4 gap-y-2">
        <p className="text-sm text-soft">Places go to those with</p>
        <ChoiceLinks
          label="Whom places are given to"
          choices={[
            { href: hrefOf("yes"), label: `a yes (${counts.yes})`, current: considering === "yes" },
            { href: hrefOf("maybe"), label: `a yes or a maybe (${counts.maybe})`, current: considering === "maybe" },
          ]}
        />
      </div>
      <SolveState {...{ wouldMove, people, isFirst }} />
      {mayAct && wouldMove !== null && wouldMove.many > 0 ? (
        <OneButtonForm
          action={solvePlaces}
          sends={{ callId, with: considering }}
          button={isFirst ? "Give places" : "Solve again"}
          waiting="Giving places…"
          look="main"
        />
      ) : null}
    </div>
  );
}

function SolveState({ wouldMove, people, isFirst }: Pick<SolvePanelProps, "wouldMove" | "people" | "isFirst">) {
  if (wouldMove === null)
    return (
      <Notice tone="problem" title="Nothing can be solved while a size has more locks than places">
        Unlock or move somebody there, or want more testers in that size. The table below says where.
      </Notice>
    );
  if (wouldMove.many === 0)
    return (
      <Notice
        title={
          isFirst ? "Nobody can be given a place by now" : "Nobody would stand elsewhere if this were solved again"
        }
      >
        {isFirst ? "The table of those waiting says why." : null}
      </Notice>
    );
  if (isFirst)
    return (
      <p className="mb-4 max-w-3xl text-soft">
        Nobody stands in a size yet. {wouldMove.many === 1 ? "1 applicant" : `${wouldMove.many} applicants`} can be
        given one: first the least number in as many sizes as can be, then as many places as can be, then the best fit.
        Nothing is sent by it.
      </p>
    );
  return (
    <Notice title="Something has changed: this is no longer what solving would give">
      <p>Solved again:</p>
      <ul className="mb-1 list-disc pl-5">
        {wouldMove.first.map((move) => (
          <li key={move.application}>
            <bdi className="wrap-anywhere">{people.nameOf(move.application)}</bdi> {moveWords(move, people)}
          </li>
        ))}
        {wouldMove.many > wouldMove.first.length ? <li>and {wouldMove.many - wouldMove.first.length} more.</li> : null}
      </ul>
      <p>Nobody moves until you ask for it. Those you have locked or left waiting stay, and so do the invited.</p>
    </Notice>
  );
}

type Move = NonNullable<StoredSide["wouldMove"]>["first"][number];

function moveWords({ from, to }: Move, { words }: BoardPeople): string {
  if (to === null) return `would wait instead of standing in ${words.size(from ?? "")}.`;
  return from === null ? `would come to ${words.size(to)}.` : `would go from ${words.size(from)} to ${words.size(to)}.`;
}
