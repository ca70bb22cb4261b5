import type { LengthUnit } from "@/engine/units";
import { itemKey, type ItemAddress } from "./decision-copy";
import { DecisionForms } from "./decision-forms";
import { doubtWords, standingWords } from "./mistakes-copy";
import type { ReportVerdicts } from "./report-verdicts";

type Item = Pick<ItemAddress, "part" | "position">;

interface VerdictProps {
  readonly verdicts: ReportVerdicts;
  readonly item: Item;
  readonly unit: LengthUnit;
}

/** What looks wrong with a number of a report, and who decided what about it; nothing where nothing is known. */
export function ItemVerdict({ verdicts, item, unit }: VerdictProps) {
  const { made, flagged, decision, counts } = verdictOf(verdicts, item);
  if (flagged === null && made === null) return null;
  return (
    <>
      {flagged?.suspect ? <p className="text-sm">{doubtWords(flagged, unit)}</p> : null}
      <p className="text-sm font-semibold">{standingWords({ decision, counts }, made, unit)}</p>
    </>
  );
}

interface DecisionsProps extends VerdictProps {
  readonly callId: string;
  /** Names the item for people who hear the page. */
  readonly name: string;
}

/** Include, exclude, and of a reading also use another value. */
export function ItemDecisions({ verdicts, item, unit, callId, name }: DecisionsProps) {
  const { made, decision, counts } = verdictOf(verdicts, item);
  return (
    <DecisionForms
      item={{ tester: verdicts.tester, ...item }}
      decided={made?.at?.toISOString() ?? ""}
      {...{ callId, name, decision, counts, unit }}
    />
  );
}

function verdictOf({ tester, decisions, flagged }: ReportVerdicts, { part, position }: Item) {
  const made = decisions.get(itemKey({ tester, part, position })) ?? null;
  const found = flagged.find((item) => item.part === part && item.position === position) ?? null;
  const decision = made?.decision ?? null;
  const counts = decision === null ? found?.suspect?.setAside !== true : decision !== "set-aside";
  return { made, flagged: found, decision, counts };
}
