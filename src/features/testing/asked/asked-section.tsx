import type { ReportContext } from "@/engine/reporting";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { dayIn } from "../home/due-copy";
import { fieldWords } from "../report/field-copy";
import { seeAnswer, withdrawAsked } from "./asked-actions";
import type { questionsAboutNumbers } from "./asked-data";

type Asked = Awaited<ReturnType<typeof questionsAboutNumbers>>[number];

interface AskedSectionProps {
  readonly callId: string;
  readonly asked: readonly Asked[];
  /** Of their newest report; undefined while there is none. */
  readonly context: ReportContext | undefined;
  readonly timeZone: string;
  readonly mayEdit: boolean;
  /** The test is open: a question can still be withdrawn. */
  readonly isOpen: boolean;
}

/** What the designer asked about numbers of a tester's report, and the answers. */
export function AskedSection({ callId, asked, context, timeZone, mayEdit, isOpen }: AskedSectionProps) {
  if (asked.length === 0) return null;
  return (
    <Section title="Questions about their numbers">
      <ol className="grid gap-4">
        {asked.map((question) => (
          <li key={question.questionId} className="wrap-anywhere">
            <p className="text-sm text-soft">
              {fieldWords(question.field, context)}
              {question.about === "" ? "" : `, “${question.about}”`}; asked on {dayIn(question.askedAt, timeZone)}
            </p>
            <p dir="auto" className="whitespace-pre-line">
              {question.asks}
            </p>
            <p className={question.isSeen ? "" : "font-semibold"}>{outcomeWords(question, timeZone)}</p>
            {mayEdit ? <QuestionButton {...{ callId, question, isOpen }} /> : null}
          </li>
        ))}
      </ol>
    </Section>
  );
}

/** What can be done about a question: an answer was read, or nobody has answered and it is withdrawn. */
function QuestionButton({
  callId,
  question: { questionId, asks, answeredAt, isSeen },
  isOpen,
}: Pick<AskedSectionProps, "callId" | "isOpen"> & { readonly question: Asked }) {
  if (answeredAt === null ? !isOpen : isSeen) return null;
  const words = `“${asks.slice(0, 60)}”`;
  return (
    <div className="mt-2">
      {answeredAt === null ? (
        <OneButtonForm
          action={withdrawAsked}
          sends={{ callId, questionId }}
          button="Withdraw question"
          waiting="Withdrawing …"
          about={words}
        />
      ) : (
        <OneButtonForm
          action={seeAnswer}
          sends={{ callId, questionId }}
          button="Got it"
          waiting="One moment …"
          about={`the answer to ${words}`}
        />
      )}
    </div>
  );
}

function outcomeWords({ answer, changedTo, answeredAt }: Asked, timeZone: string): string {
  if (answeredAt === null) return "Not answered yet.";
  const day = dayIn(answeredAt, timeZone);
  if (changedTo !== null) return changedTo === "" ? `Removed on ${day}.` : `Changed to “${changedTo}” on ${day}.`;
  return answer === ""
    ? `They said on ${day} that it is right.`
    : `They said on ${day} that it is right: “${answer ?? ""}”`;
}
