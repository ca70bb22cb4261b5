import { callPageHref } from "@/features/calls/call-pages";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import type { PageOfList } from "@/ui/page-number";
import { Paging } from "@/ui/paging";
import type { TesterBoard } from "./habits-board";
import { boardSentence } from "./habits-copy";
import { TesterConsistency } from "./tester-consistency";
import { TesterNumbers } from "./tester-numbers";

interface TestersViewProps {
  readonly callId: string;
  readonly board: TesterBoard;
  readonly view: "pictures" | "table";
  /** The testers on this page. */
  readonly list: PageOfList;
}

/** Every tester compared with the others. */
export function HabitsView({ callId, board, view, list }: TestersViewProps) {
  if (board.testers === 0)
    return (
      <EmptyState title="No reports yet">
        <p>
          Once three testers have sent measurements, this page shows whose are larger or smaller than the others’, and
          how much each fabric changed from swatch to garment.
        </p>
      </EmptyState>
    );
  const address = callPageHref(callId, "habits");
  return (
    <>
      <StandOut {...{ board, view, address, list }} />
      <div className="mb-4 flex flex-wrap items-center justify-between gap-3">
        <ChoiceLinks
          label="View"
          choices={[
            { label: "Pictures", href: address, current: view === "pictures" },
            { label: "Numbers", href: `${address}?view=table`, current: view === "table" },
          ]}
        />
        <a href={`${address}.csv`} className="text-link text-sm">
          Download measuring habits (CSV)
        </a>
      </div>
      {view === "table" ? <TesterNumbers board={board} /> : <TesterConsistency board={board} />}
      <Paging
        label="Pages of testers"
        page={list.page}
        pages={list.pages}
        hrefOf={(page) => `${address}?view=${view}&page=${page}`}
      />
    </>
  );
}

interface StandOutProps extends Pick<TestersViewProps, "board" | "view" | "list"> {
  readonly address: string;
}

/** Who stands out, each with a link to their row. */
function StandOut({ board, view, address, list }: StandOutProps) {
  const { testers, all } = board.standOut;
  const pageOf = (position: number) => Math.floor(position / list.take) + 1;
  const isHere = (position: number) => view === "pictures" && pageOf(position) === list.page;
  return (
    <p className="numbers mb-6 max-w-4xl font-serif text-xl leading-relaxed wrap-anywhere">
      {boardSentence(board)}{" "}
      {board.limits === null || all === 0 ? null : (
        <>
          {testers.map(({ tester, name, position }, index) => (
            <span key={tester}>
              {index === 0 ? "" : ", "}
              <a
                href={`${isHere(position) ? "" : `${address}?page=${pageOf(position)}`}#tester-${tester}`}
                className="text-link"
              >
                {name}
              </a>
            </span>
          ))}
          {all > testers.length ? ` and ${all - testers.length} more` : ""}.
        </>
      )}
    </p>
  );
}
