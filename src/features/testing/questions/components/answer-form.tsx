import { answer } from "../actions";
import type { QuestionThread } from "../place-notes-data";
import { SayForm } from "./say-form";

interface AnswerFormProps {
  readonly callId: string;
  /** The questions that the answer is for: waiting, or already answered. */
  readonly thread: QuestionThread;
}

/** One answer for all waiting questions about a passage, or a new version of an answer. */
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
            hint: "All testers of this test see it next to this passage.",
            initial: before ?? undefined,
          },
        ]}
        storageKey={`answer-${ids[0]}-${seenAt}`}
        send={before === null ? "Send answer" : "Save answer"}
        waiting="Sending …"
        done={<p>Your answer is sent.</p>}
      />
    </div>
  );
}

function answerLabel(answered: number, many: number): string {
  if (many > answered) return `Your answer to the first ${answered} of these ${many} questions`;
  return answered > 1 ? `Your answer to these ${answered} questions` : "Your answer";
}
