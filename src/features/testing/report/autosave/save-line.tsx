import { Button } from "@/ui/button";
import type { SaveAnswer } from "../save-answer";
import type { SaveStatus } from "./field-autosave";

interface SaveLineProps {
  readonly status: SaveStatus;
  /** The answer to a form that was sent without JavaScript. */
  readonly answer: SaveAnswer | null;
  readonly isSaving: boolean;
}

/** Below a form: whether everything is saved, and a button that saves it now. */
export function SaveLine({ status, answer, isSaving }: SaveLineProps) {
  const { state } = status;
  const isProblem = state === "offline" || state === "closed";
  return (
    <div className="sticky bottom-0 mt-6 flex items-center justify-between gap-4 border-t border-line-strong bg-paper py-2">
      <p className="min-w-0 text-sm text-soft">
        {isProblem ? null : <span>{quietWords(status, answer)}</span>}
        <span role="status" className="font-semibold text-thread">
          {isProblem ? `▲ ${problemWords(status)}` : ""}
        </span>
      </p>
      <Button type="submit" look="quiet" disabled={isSaving} className="shrink-0">
        Save
      </Button>
    </div>
  );
}

function quietWords({ state, asked }: SaveStatus, answer: SaveAnswer | null): string {
  const needs =
    asked.length === 0 ? "" : `; ${asked.length === 1 ? "1 field needs" : `${asked.length} fields need`} your decision`;
  switch (state) {
    case "idle":
      return answer === null ? "" : answer.status === "failed" ? answer.message : "Saved.";
    case "saving":
      return `Saving …${needs}`;
    default:
      return asked.length === 0 ? "Saved." : `Everything else is saved${needs}.`;
  }
}

function problemWords({ state, waiting, outlives, message }: SaveStatus): string {
  if (state === "closed") return `${message} What you typed is still on this page.`;
  const fields = waiting === 1 ? "1 field is" : `${waiting} fields are`;
  if (outlives) return `No connection: ${fields} stored on this device and will be sent when you are back online.`;
  return `No connection, and this browser stores nothing: leave this page open. ${fields} waiting to be sent when you are back online.`;
}
