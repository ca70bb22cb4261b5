import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import type { TesterBoard } from "../tester-board";
import { boardSentence } from "../tester-words";
import { TesterConsistency } from "./tester-consistency";
import { TesterNumbers } from "./tester-numbers";

interface TestersViewProps {
  readonly callId: string;
  readonly board: TesterBoard;
  readonly view: "pictures" | "table";
}

/** Every tester beside the others. */
export function TestersView({ callId, board, view }: TestersViewProps) {
  if (board.testers === 0)
    return (
      <EmptyState title="No reports yet">
        <p>
          As soon as three testers’ measurements are here, this page shows whose run large or small beside the others’,
          and how far each one’s fabric came out from her swatch.
        </p>
      </EmptyState>
    );
  const address = `/calls/${callId}/testers`;
  const { standOut: out } = board;
  return (
    <>
      <p className="numbers mb-6 max-w-4xl font-serif text-xl leading-relaxed wrap-anywhere">
        {boardSentence(board)}{" "}
        {board.limits === null
          ? null
          : out.map(({ tester, name }, at) => (
              <span key={tester}>
                {at === 0 ? "" : ", "}
                <a href={`${view === "table" ? address : ""}#tester-${tester}`} className="text-link">
                  {name}
                </a>
              </span>
            ))}
        {out.length > 0 && board.limits !== null ? "." : ""}
      </p>
      <div className="mb-4 flex flex-wrap items-center justify-between gap-3">
        <ChoiceLinks
          label="Ways to read the testers"
          choices={[
            { label: "Pictures", href: address, current: view === "pictures" },
            { label: "Numbers", href: `${address}?view=table`, current: view === "table" },
          ]}
        />
        <a href={`${address}.csv`} className="text-link text-sm">
          Numbers as a CSV file
        </a>
      </div>
      {view === "table" ? <TesterNumbers board={board} /> : <TesterConsistency board={board} />}
    </>
  );
}
