"use client";

import type { ReactNode } from "react";
import { AskedAtField } from "../autosave/asked-at-field";
import { FieldMessages, remarksId } from "./field-messages";
import { QuestionSpace } from "./question-space";

/** How a number field is drawn. */
export interface FieldLooks {
  readonly label: ReactNode;
  /** Shown after the input: `cm`, `stitches`. */
  readonly unit?: string;
  readonly hint?: ReactNode;
  readonly placeholder?: string;
  /** `text` for fractions, which number keyboards cannot type. */
  readonly keyboard?: "decimal" | "text";
  /** In the line of the input, after its unit. */
  readonly beside?: ReactNode;
  /** Below the input, for what its keyboard lacks. */
  readonly keys?: ReactNode;
  /** Fills the space in which a question appears. */
  readonly space?: ReactNode;
  /** A question is one line in the place of the hint, and opens its answers: for long lists, where room for each would be lost. */
  readonly foldsQuestion?: boolean;
  /** False where the question, and what is missing, stand elsewhere. */
  readonly hasQuestion?: boolean;
}

interface ReportControlProps extends FieldLooks {
  readonly field: string;
  readonly text?: string;
  readonly isPrefilled?: boolean;
  readonly faults?: readonly string[];
  readonly remarks?: readonly string[];
  /** A question about the number. */
  readonly question?: ReactNode;
  /** The answer to it, to take back. */
  readonly kept?: ReactNode;
  /** What the designer asks about the number. */
  readonly designersQuestion?: ReactNode;
}

const NONE: readonly string[] = [];

/** A field of a report. A client component, so that a page of them is sent as words and not again as elements. */
export function ReportControl(props: ReportControlProps) {
  const { field, label, unit, hint, placeholder, keyboard = "decimal", beside, keys, space } = props;
  const { text = "", isPrefilled, faults = NONE, remarks = NONE, question, kept, designersQuestion } = props;
  const { foldsQuestion = false, hasQuestion = true } = props;
  const notes = (
    <>
      <FieldMessages field={field} faults={faults} remarks={remarks} />
      {question}
      <AskedAtField field={field} />
    </>
  );
  const hintLine = hint ? (
    <div id={`${field}-hint`} className="mb-1.5 text-sm text-soft">
      {hint}
    </div>
  ) : null;
  const inSpace = foldsQuestion ? hintLine : space;
  return (
    <div className="min-w-0">
      <label htmlFor={field} className="mb-1 block font-semibold wrap-anywhere">
        {label}
      </label>
      {foldsQuestion ? null : hintLine}
      <div className="flex flex-wrap items-center gap-2">
        <input
          id={field}
          name={field}
          defaultValue={text}
          {...(isPrefilled ? { "data-prefilled": true } : {})}
          placeholder={placeholder}
          inputMode={keyboard}
          autoCapitalize="none"
          maxLength={200}
          aria-invalid={faults.length > 0}
          aria-describedby={`${hint ? `${field}-hint ` : ""}${field}-unit ${field}-messages${hasQuestion ? "" : ` ${remarksId(field)}`}`}
          className="control numbers min-h-11 min-w-12 flex-1"
        />
        <span id={`${field}-unit`} className={unit ? "shrink-0 text-soft" : "hidden"}>
          {unit}
        </span>
        {beside}
      </div>
      {keys}
      {inSpace === undefined ? (
        <>
          {notes}
          {kept}
        </>
      ) : (
        <QuestionSpace
          size={foldsQuestion ? "line" : "usual"}
          space={
            <>
              {kept}
              {inSpace}
            </>
          }
        >
          {notes}
        </QuestionSpace>
      )}
      {designersQuestion}
    </div>
  );
}
