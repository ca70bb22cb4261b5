import { Button } from "@/ui/button";
import type { AskedField, SaveAnswer } from "../save-answer";
import { askedId } from "./asked-fields";
import type { SaveStatus } from "./field-autosave";
import { StepBar, type NextPage } from "./step-bar";
import { THEN } from "./then";

interface SaveLineProps {
  readonly status: SaveStatus;
  readonly asked: readonly AskedField[];
  /** The answer to a form that was sent without JavaScript. */
  readonly answer: SaveAnswer | null;
  readonly next: NextPage | null;
}

/** Below a form: whether everything is saved, and the way to the next step. */
export function SaveLine({ status, asked, answer, next }: SaveLineProps) {
  const { state } = status;
  const isProblem = state === "offline" || state === "closed";
  return (
    <>
      <p role="status" className={`font-semibold text-thread wrap-anywhere ${isProblem ? "mt-6" : ""}`}>
        {isProblem ? `▲ ${problemWords(status)}` : ""}
      </p>
      <StepBar
        next={
          // Not a link: pressed before the scripts have come, it saves, too.
          next === null ? null : (
            <Button type="submit" name={THEN} value={next.page}>
              Next: {next.label}
            </Button>
          )
        }
        status={
          <p className={isProblem ? "font-semibold text-thread" : "text-soft"}>
            {isProblem ? (
              `▲ ${state === "closed" ? "Not saved" : "Only on this device"}`
            ) : (
              <QuietWords state={state} asked={asked} answer={answer} />
            )}
          </p>
        }
        withoutScripts={
          <noscript>
            <Button type="submit" look="quiet">
              Save
            </Button>
          </noscript>
        }
      />
    </>
  );
}

interface QuietWordsProps extends Pick<SaveLineProps, "asked" | "answer"> {
  readonly state: SaveStatus["state"];
}

function QuietWords({ state, asked: [first, ...others], answer }: QuietWordsProps) {
  if (state === "idle" && answer === null) return null;
  if (state === "idle" && answer?.status === "failed") return answer.message;
  const isSaving = state === "saving";
  if (first === undefined) return isSaving ? "Saving …" : "Saved.";
  return (
    <>
      {isSaving ? "Saving …" : "Everything else is saved"};{" "}
      <a href={`#${askedId(first)}`} className="text-link">
        {others.length === 0 ? "1 field needs" : `${others.length + 1} fields need`} your decision
      </a>
      {isSaving ? null : "."}
    </>
  );
}

function problemWords({ state, waiting, outlives, message }: SaveStatus): string {
  if (state === "closed") return `${message} What you typed is still on this page.`;
  const fields = waiting === 1 ? "1 field is" : `${waiting} fields are`;
  if (outlives) return `No connection: ${fields} stored on this device and will be sent when you are back online.`;
  return `No connection, and this browser stores nothing: leave this page open. ${fields} waiting to be sent when you are back online.`;
}
