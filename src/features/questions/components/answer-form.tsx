import { answer } from "../actions";
import type { QuestionThread } from "../said-data";
import { SayForm } from "./say-form";

interface AnswerFormProps {
  readonly callId: string;
  /** What the answer is for: questions that wait, or that have an answer. */
  readonly thread: QuestionThread;
}

/** One answer for all questions that wait at a place, or another one in the place of an answer. */
export function AnswerForm({ callId, thread }: AnswerFormProps) {
  const { ids, many, answer: before } = thread;
  const seenAt = thread.answeredAt?.toISOString() ?? "";
  return (
    <div className={before === null ? "mt-4" : ""}>
      <SayForm
        action={answer}
        hidden={[
          ["callId", callId],
          ["seenAt", seenAt],
          ["questions", ids.join(" ")],
        ]}
        fields={[
          {
            name: "answer",
            label: answerLabel(ids.length, many),
            hint: "All testers of this call read it at this place.",
            initial: before ?? undefined,
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

function answerLabel(answered: number, many: number): string {
  if (many > answered) return `Your answer to the first ${answered} of these ${many} questions`;
  return answered > 1 ? `Your answer to these ${answered} questions` : "Your answer";
}
