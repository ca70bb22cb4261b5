import { answer } from "../actions";
import type { AnswerThread } from "../answer-threads";
import type { CallQuestion } from "../data";
import { SayForm } from "./say-form";

interface AnswerFormProps {
  readonly callId: string;
  /** What the answer is for. */
  readonly questions: readonly CallQuestion[];
  /** The answer that they have; null where they have none. */
  readonly before: AnswerThread | null;
}

/** One answer for all questions that wait at a place, or another one in the place of an answer. */
export function AnswerForm({ callId, questions, before }: AnswerFormProps) {
  const seenAt = before?.answeredAt.toISOString() ?? "";
  const ids = questions.map(({ questionId }) => questionId);
  return (
    <div className={before === null ? "mt-4" : ""}>
      <SayForm
        action={answer}
        hidden={[["callId", callId], ["seenAt", seenAt], ...ids.map((id) => ["questions[]", id] as const)]}
        fields={[
          {
            name: "answer",
            label: ids.length > 1 ? `Your answer to these ${ids.length} questions` : "Your answer",
            hint: "All testers of this call read it at this place.",
            initial: before?.answer,
          },
        ]}
        keptAs={`answer-${ids[0]}-${seenAt}`}
        send={before === null ? "Answer for all" : "Save the answer"}
        waiting="Sending …"
        done={<p>The answer is sent.</p>}
      />
    </div>
  );
}
