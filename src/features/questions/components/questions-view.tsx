import type { PatternDocument } from "@/engine/pattern";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { answerThreads } from "../answer-threads";
import type { CallQuestion } from "../data";
import { groupByPlace, type PlaceGroup } from "../group-by-place";
import { AskedPlace } from "./asked-place";

interface QuestionsViewProps {
  readonly questions: readonly CallQuestion[];
  readonly pattern: PatternDocument;
  readonly callId: string;
  readonly mayEdit: boolean;
}

/** All questions of a call by place in the text: first where somebody waits for an answer. */
export function QuestionsView({ questions, pattern, ...call }: QuestionsViewProps) {
  if (questions.length === 0) return <NoQuestions hasText={(pattern.instructions ?? "").trim() !== ""} />;
  const groups = groupByPlace(pattern.instructions ?? "", questions);
  const isWaiting = ({ said }: PlaceGroup<CallQuestion>) => said.some(({ answer }) => answer === null);
  const waiting = groups.filter(isWaiting);
  const answered = groups.filter((group) => !isWaiting(group));
  const open = questions.filter(({ answer }) => answer === null).length;
  const list = (shown: typeof groups) => (
    <ul className="grid grid-cols-1 gap-6">
      {shown.map((group) => (
        <li key={group.key}>
          <AskedPlace group={group} {...answerThreads(group.said)} pattern={pattern} {...call} />
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <Section title={open === 0 ? "Nobody waits for an answer" : `Waiting for an answer: ${open}`}>
        {waiting.length === 0 ? <p className="text-soft">Every question is answered.</p> : list(waiting)}
      </Section>
      {answered.length > 0 ? <Section title="Answered">{list(answered)}</Section> : null}
    </>
  );
}

function NoQuestions({ hasText }: { readonly hasText: boolean }) {
  return (
    <div className="mb-12">
      {" "}
      <EmptyState title="No questions yet">
        <p>
          Testers ask at a place of the written instructions. Their questions stand here with the words that they ask
          about; you answer once, and all testers of this call read it at that place.
        </p>
        {hasText ? null : (
          <p className="mt-2">The newest revision has no written instructions, so there is no place to ask about.</p>
        )}
      </EmptyState>
    </div>
  );
}
