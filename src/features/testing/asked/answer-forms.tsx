"use client";

import { createContext, useContext, type ReactNode } from "react";
import { Button } from "@/ui/button";
import { describedBy, Field, TextArea } from "@/ui/field";
import { useHandedForm } from "@/ui/use-handed-form";
import { answerAbout, type FailedAnswer } from "./asked-actions";

interface Answering {
  readonly failed: FailedAnswer | undefined;
  readonly isSending: boolean;
}

const AnsweringContext = createContext<Answering>({ failed: undefined, isSending: false });

interface AnswerFormsProps {
  readonly testerId: string;
  /** The questions that can be answered on this page. */
  readonly questionIds: readonly string[];
  /** The form of the report, whose fields show the questions: a form cannot stand inside another. */
  readonly children: ReactNode;
}

/** The forms of the answers that stand under their fields. */
export function AnswerForms({ testerId, questionIds, children }: AnswerFormsProps) {
  const { answer: failed, isSending, formProps } = useHandedForm<FailedAnswer>(answerAbout);
  return (
    <AnsweringContext value={{ failed, isSending }}>
      {children}
      {questionIds.map((questionId) => (
        <form key={questionId} id={formId(questionId)} {...formProps}>
          <input type="hidden" name="testerId" value={testerId} />
          <input type="hidden" name="questionId" value={questionId} />
        </form>
      ))}
    </AnsweringContext>
  );
}

/** The words and the button of one answer, under its field. */
export function AnswerFields({ questionId }: { readonly questionId: string }) {
  const { failed, isSending } = useContext(AnsweringContext);
  const id = `answer-${questionId}`;
  const form = formId(questionId);
  return (
    <div className="mt-3 [&>div]:mb-3">
      <Field
        id={id}
        label="Or, if it is right, a few words (optional)"
        errors={failed?.questionId === questionId ? [failed.says] : undefined}
      >
        <TextArea id={id} form={form} name="answer" rows={2} dir="auto" aria-describedby={describedBy(id)} />
      </Field>
      <Button type="submit" form={form} look="quiet" disabled={isSending}>
        {isSending ? "Sending …" : "It is right as it is"}
      </Button>
    </div>
  );
}

function formId(questionId: string): string {
  return `answer-form-${questionId}`;
}
