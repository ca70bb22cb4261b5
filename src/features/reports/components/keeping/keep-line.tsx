import { Button } from "@/ui/button";
import type { KeepAnswer } from "../../keep-answer";
import type { Keeping } from "./field-keeper";

interface KeepLineProps {
  readonly keeping: Keeping;
  /** Of a form that was sent without JavaScript. */
  readonly answer: KeepAnswer | null;
  readonly isSaving: boolean;
}

/** Below a form: whether what she typed is kept, and the button that keeps it now. */
export function KeepLine({ keeping, answer, isSaving }: KeepLineProps) {
  const { state } = keeping;
  const isProblem = state === "away" || state === "over";
  return (
    <div className="sticky bottom-0 mt-6 flex items-center justify-between gap-4 border-t border-line-strong bg-paper py-2">
      <p className="min-w-0 text-sm text-soft">
        {isProblem ? null : <span>{quietWords(keeping, answer)}</span>}
        <span role="status" className="font-semibold text-thread">
          {isProblem ? `▲ ${problemWords(keeping)}` : ""}
        </span>
      </p>
      <Button type="submit" look="quiet" disabled={isSaving} className="shrink-0">
        Save
      </Button>
    </div>
  );
}

function quietWords({ state, asked }: Keeping, answer: KeepAnswer | null): string {
  const needs = asked.length === 0 ? "" : `; ${asked.length} ${asked.length === 1 ? "needs" : "need"} you`;
  switch (state) {
    case "unheard":
      return answer === null ? "" : answer.status === "failed" ? answer.says : "Saved.";
    case "keeping":
      return `Keeping …${needs}`;
    default:
      return asked.length === 0 ? "Everything is kept." : `All else is kept${needs}.`;
  }
}

function problemWords({ state, waiting, outlives, says }: Keeping): string {
  if (state === "over") return `${says} What you typed still stands on this page.`;
  const fields = waiting === 1 ? "1 field is" : `${waiting} fields are`;
  if (outlives) return `Not connected: ${fields} kept on this device, and sent when you are back.`;
  return `Not connected, and this browser keeps nothing: leave this page open. ${fields} sent when you are back.`;
}
