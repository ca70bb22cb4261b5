import type { LoadedTester } from "../loaders";
import { dayIn } from "../due-words";
import { MilestoneForm } from "./milestone-form";
import { MILESTONE_WORDS } from "./milestone-words";

interface MilestonePanelProps {
  readonly tester: LoadedTester["tester"];
  readonly pageKey: string;
}

/** What she said last, and one tap for what she says now. */
export function MilestonePanel({ tester: { testerId, milestone, timeZone }, pageKey }: MilestonePanelProps) {
  return (
    <>
      {milestone === null || milestone.word === "stop" ? null : (
        <p className="mb-3 wrap-anywhere" role="status">
          You said <span className="font-semibold">{MILESTONE_WORDS[milestone.word]}</span> on{" "}
          {dayIn(milestone.at, timeZone)}
          {milestone.note ? (
            <>
              : “<bdi>{milestone.note}</bdi>”
            </>
          ) : (
            "."
          )}
        </p>
      )}
      <MilestoneForm key={pageKey} testerId={testerId} pageKey={pageKey} />
    </>
  );
}
