import { parseField } from "@/engine/reporting";
import type { FilledReport } from "../report/filled-report";
import { AnswerFields } from "./answer-forms";

interface NumberQuestionBoxProps {
  readonly report: FilledReport;
  readonly field: string;
}

/** What the designer asks about the number of a field, and the tester's answer. */
export function NumberQuestionBox({ report, field }: NumberQuestionBoxProps) {
  return report.asked
    .filter((question) => question.field === field)
    .map(({ questionId, asks, answer, answeredAt }) => (
      <div key={questionId} className="mt-3 rounded-md border-l-4 border-thread bg-band px-4 py-3 wrap-anywhere">
        <p className="text-sm font-semibold">
          {answeredAt === null ? "The designer asks about this number" : "The designer asked about this number"}
        </p>
        <p dir="auto" className="mt-1 whitespace-pre-line">
          {asks}
        </p>
        {answeredAt === null ? null : <p className="mt-1 text-sm text-soft">{answeredWords(answer)}</p>}
        {answeredAt === null && report.ended === null ? (
          <>
            <p className="mt-1 text-sm text-soft">
              {parseField(field)?.kind === "reading"
                ? "If it is wrong, correct it above. If you measured again, add another reading. Then send your report again."
                : "If it is wrong, correct it above and send your report again."}
            </p>
            <AnswerFields questionId={questionId} />
          </>
        ) : null}
      </div>
    ));
}

function answeredWords(answer: string | null): string {
  if (answer === null) return "You changed it and sent your report.";
  return answer === "" ? "You said that it is right." : `You said that it is right: “${answer}”`;
}
