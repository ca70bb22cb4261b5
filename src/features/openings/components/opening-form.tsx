"use client";

import { useEffect, useRef } from "react";
import type { EditedOpening } from "../edited-data";
import type { AskableMeasurement } from "../field-names";
import type { FieldFault } from "../read-typed";
import { AnswerNotice } from "./answer-notice";
import { OpeningButtons } from "./opening-buttons";
import { OpeningFields } from "./opening-fields";
import { openingFormState } from "./opening-form-state";
import type { SpotAdvice } from "./spot-fields";
import { useOpeningForm } from "./use-opening-form";

export interface OpeningFormProps {
  readonly callId: string;
  readonly opening: EditedOpening;
  readonly sizes: readonly { readonly id: string; readonly label: string; readonly made: string }[];
  readonly body: readonly AskableMeasurement[];
  readonly advice: SpotAdvice;
  readonly timeZones: readonly string[];
  /** What stands between a draft and its being published. */
  readonly open: readonly FieldFault[];
  readonly mayEdit: boolean;
}

/** The opening of a call, to be written, published and changed. */
export function OpeningForm(props: OpeningFormProps) {
  const { callId, opening, mayEdit } = props;
  const { answer, formProps, pending } = useOpeningForm();
  const notice = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (answer !== undefined && answer.status !== "kept") notice.current?.focus();
  }, [answer]);
  const isPublished = opening.publishedAt !== null;
  return (
    <>
      <div ref={notice} tabIndex={-1} className="outline-none">
        <AnswerNotice callId={callId} answer={answer} isPublished={isPublished} />
      </div>
      <form {...formProps}>
        <input type="hidden" name="callId" value={callId} />
        <input type="hidden" name="version" value={answer?.version ?? opening.version} />
        <fieldset disabled={!mayEdit} className="min-w-0">
          <OpeningFields {...props} state={openingFormState(opening.typed, answer)} />
        </fieldset>
        {mayEdit ? (
          <OpeningButtons isPublished={isPublished} open={props.open} answer={answer} pending={pending} />
        ) : null}
      </form>
    </>
  );
}
