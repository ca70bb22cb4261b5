import { ChoiceLinks } from "@/ui/choice-links";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { solvePlaces } from "../actions";
import type { BoardPeople } from "../board-people";
import type { Considering, StoredSide } from "../stored-board";

interface SolvePanelProps {
  readonly callId: string;
  readonly mayAct: boolean;
  readonly considering: Considering;
  /** How many are considered with a yes only, and with a maybe too. */
  readonly counts: Readonly<Record<Considering, number>>;
  readonly wouldMove: StoredSide["wouldMove"];
  readonly people: BoardPeople;
  /** No sizes are assigned yet. */
  readonly isFirst: boolean;
  /** This page's address with and without those with a maybe. */
  readonly hrefOf: (considering: Considering) => string;
}

/** Who is considered, whether assigning again would change anything, and the button that assigns sizes. */
export function SolvePanel(props: SolvePanelProps) {
  const { callId, mayAct, considering, counts, wouldMove, people, isFirst, hrefOf } = props;
  return (
    <div>
      <div className="mb-4 flex flex-wrap items-center gap-x-4 gap-y-2">
        <p className="text-sm text-soft">Assign sizes to applicants with</p>
        <ChoiceLinks
          label="Who gets a size"
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
          button={isFirst ? "Assign sizes" : "Assign sizes again"}
          waiting="Assigning sizes…"
          look="main"
        />
      ) : null}
    </div>
  );
}

function SolveState({ wouldMove, people, isFirst }: Pick<SolvePanelProps, "wouldMove" | "people" | "isFirst">) {
  if (wouldMove === null)
    return (
      <Notice tone="problem" title="A size has more locked people than it may have">
        Unlock or move someone, or set a higher “at most” under Set up. The table below shows which size.
      </Notice>
    );
  if (wouldMove.many === 0)
    return (
      <Notice title={isFirst ? "No applicant can get a size at the moment" : "This is already the best arrangement"}>
        {isFirst ? "The table “Who is waiting” shows why." : null}
      </Notice>
    );
  if (isFirst)
    return (
      <p className="mb-4 max-w-3xl text-soft">
        No sizes are assigned yet. {wouldMove.many === 1 ? "1 applicant" : `${wouldMove.many} applicants`} can get one.
        Sizewright first fills as many sizes as possible to their minimum, then as many spots as possible, then finds
        the best fit. Nothing is sent yet.
      </p>
    );
  return (
    <Notice title="Something has changed: assigning sizes again would give a different result">
      <p>If you assign sizes again:</p>
      <ul className="mb-1 list-disc pl-5">
        {wouldMove.first.map((move) => (
          <li key={move.application}>
            <bdi className="wrap-anywhere">{people.nameOf(move.application)}</bdi> {moveWords(move, people)}
          </li>
        ))}
        {wouldMove.many > wouldMove.first.length ? <li>and {wouldMove.many - wouldMove.first.length} more.</li> : null}
      </ul>
      <p>Nobody moves until you do that. People you locked or left waiting stay, and so do people already invited.</p>
    </Notice>
  );
}

type Move = NonNullable<StoredSide["wouldMove"]>["first"][number];

function moveWords({ from, to }: Move, { words }: BoardPeople): string {
  if (to === null) return `would wait instead of making ${words.size(from ?? "")}.`;
  return from === null ? `would get ${words.size(to)}.` : `would move from ${words.size(from)} to ${words.size(to)}.`;
}
