import type { PatternDocument } from "@/engine/pattern";
import { Notice } from "@/ui/notice";
import { retestGroups } from "./retest-copy";
import { awaitingRetest, type CorrectedSizeStanding } from "./retest-data";

interface RetestNoticeProps {
  readonly pattern: Pick<PatternDocument, "sizes" | "measurements">;
  readonly standings: readonly CorrectedSizeStanding[];
}

/** Where a revision is published: the corrected sizes that no report has confirmed. */
export function RetestNotice({ pattern, standings }: RetestNoticeProps) {
  const waiting = awaitingRetest(standings);
  if (waiting.length === 0) return null;
  return (
    <Notice title="Corrected sizes that no report has confirmed">
      <ul className="numbers mt-1 space-y-1">
        {retestGroups(waiting, pattern).map(({ key, heading, says }) => (
          <li key={key} className="wrap-anywhere">
            {heading}: {says}
          </li>
        ))}
      </ul>
    </Notice>
  );
}
