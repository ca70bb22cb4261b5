import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { ApplyAnswer, AskedMeasurement } from "./apply-answer";
import { REFUSAL_WORDS } from "./apply-copy";
import { controlId } from "./answered";
import { fieldLabel, fieldPlace } from "./field-label";

interface AnswerSummaryProps {
  readonly answer: ApplyAnswer;
  readonly body: readonly AskedMeasurement[];
}

/** Why nothing was sent: the general reason, and links to the fields with errors. */
export function AnswerSummary({ answer, body }: AnswerSummaryProps) {
  const { faults, doubts, refusal, message, ownLink } = answer;
  const fields = [...Object.keys(faults), ...Object.keys(doubts)].toSorted(
    (left, right) => fieldPlace(left) - fieldPlace(right),
  );
  return (
    <>
      {message === null ? null : <Notice tone="problem">{message}</Notice>}
      {refusal === null ? null : (
        <Notice tone="problem" title={REFUSAL_WORDS[refusal].title}>
          <p>{REFUSAL_WORDS[refusal].message}</p>
          {refusal === "known" ? <WhereItIs ownLink={ownLink} /> : null}
          {refusal === "agreement" ? (
            <a href="#apply-agreement" className="text-link">
              The new text
            </a>
          ) : null}
        </Notice>
      )}
      {fields.length === 0 ? null : (
        <Notice tone="problem" title="Please check these fields, then send again">
          <ul className="mt-1 list-disc pl-5">
            {fields.map((field) => (
              <li key={field}>
                <a href={`#${controlId(field)}`} className="text-link">
                  {fieldLabel(field, body)}
                </a>
              </li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}

function WhereItIs({ ownLink }: { readonly ownLink: string | null }) {
  if (ownLink !== null)
    return (
      <Link href={`/applications/${ownLink}`} className="text-link">
        Your application
      </Link>
    );
  return (
    <p className="mt-1">
      You were shown its address when you sent it: look for “Your application” in your browser’s history. If you were
      signed in at the time, sign in and open this page again. If it was not you, apply with another e-mail address, or
      write to the designer.
    </p>
  );
}
