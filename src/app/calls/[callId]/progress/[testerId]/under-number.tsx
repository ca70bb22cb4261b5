import { randomUUID } from "node:crypto";
import type { LengthUnit } from "@/engine/units";
import type { ReportPart } from "@/features/calls/report-schema";
import { ItemDecisions, ItemVerdict } from "@/features/results/mistakes/item-verdict";
import type { ReportVerdicts } from "@/features/results/mistakes/report-verdicts";
import { AskForm } from "@/features/testing/asked/ask-form";

interface UnderNumberProps {
  readonly callId: string;
  readonly testerId: string;
  readonly number: { readonly part: ReportPart; readonly position: number } | { readonly count: string };
  /** Names the number for people who hear the page. */
  readonly name: string;
  readonly verdicts: ReportVerdicts;
  readonly unit: LengthUnit;
  readonly mayEdit: boolean;
  /** The tester can still answer. */
  readonly mayAsk: boolean;
  /** How many questions about their numbers there are: a form that was sent is empty again. */
  readonly askedBefore: number;
}

/** Under a number of a tester's report: what is known of it, decisions about it, and a question to the tester. */
export function UnderNumber({
  callId,
  testerId,
  number,
  name,
  verdicts,
  unit,
  mayEdit,
  mayAsk,
  ...props
}: UnderNumberProps) {
  const asked = "count" in number ? number : askedOf(number);
  return (
    <>
      {"count" in number ? null : <ItemVerdict {...{ verdicts, unit }} item={number} />}
      <div className="flex flex-wrap items-center gap-x-5">
        {mayEdit && !("count" in number) ? <ItemDecisions {...{ verdicts, unit, callId, name }} item={number} /> : null}
        {mayAsk && asked !== null ? (
          <AskForm key={props.askedBefore} {...{ callId, testerId, name }} number={asked} formKey={randomUUID()} />
        ) : null}
      </div>
    </>
  );
}

function askedOf({ part, position }: { readonly part: ReportPart; readonly position: number }) {
  return part === "yarn" ? null : { part, position };
}
