import type { LoadedTester } from "../loaders";
import { dayIn } from "../due-copy";
import { MilestoneForm } from "./milestone-form";
import { PROGRESS_STATUS_LABELS } from "./progress-status-labels";

interface MilestonePanelProps {
  readonly tester: LoadedTester["tester"];
  readonly pageKey: string;
}

/** The tester's last update, and one tap for the next. */
export function MilestonePanel({ tester: { testerId, milestone, timeZone }, pageKey }: MilestonePanelProps) {
  return (
    <>
      {milestone === null || milestone.status === "stop" ? null : (
        <p className="mb-3 wrap-anywhere" role="status">
          Last update, {dayIn(milestone.at, timeZone)}:{" "}
          <span className="font-semibold">{PROGRESS_STATUS_LABELS[milestone.status]}</span>
          {milestone.note ? (
            <>
              , “<bdi>{milestone.note}</bdi>”
            </>
          ) : null}
        </p>
      )}
      <MilestoneForm key={pageKey} testerId={testerId} pageKey={pageKey} />
    </>
  );
}
