"use client";

import { useEffect, useRef } from "react";
import type { EditedOpening } from "../edited-data";
import type { FieldFault } from "../read-typed";
import { AnswerNotice } from "./answer-notice";
import { OpeningButtons } from "./listing-buttons";
import { OpeningFields, type OpeningContent } from "./listing-fields";
import { openingFormState } from "./listing-form-state";
import { useOpeningForm } from "./use-listing-form";

export interface OpeningFormProps extends OpeningContent {
  readonly callId: string;
  readonly opening: EditedOpening;
  /** What must be fixed before a draft can be published. */
  readonly open: readonly FieldFault[];
  readonly mayEdit: boolean;
}

/** The form to write, publish and change the listing of a call. */
export function OpeningForm(props: OpeningFormProps) {
  const { callId, opening, mayEdit } = props;
  const { answer, formProps, pending } = useOpeningForm();
  const notice = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (answer !== undefined && answer.status !== "saved") notice.current?.focus();
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
