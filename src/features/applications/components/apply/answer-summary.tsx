import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { ApplyAnswer, AskedMeasurement } from "../../apply-form";
import { REFUSAL_WORDS } from "../../apply-words";
import { controlId } from "./answered";
import { fieldLabel, fieldPlace } from "./field-label";

interface AnswerSummaryProps {
  readonly answer: ApplyAnswer;
  readonly body: readonly AskedMeasurement[];
}

/** Why it was not sent: of the whole, and field by field with the way there. */
export function AnswerSummary({ answer, body }: AnswerSummaryProps) {
  const { faults, doubts, refusal, says, ownLink } = answer;
  const fields = [...Object.keys(faults), ...Object.keys(doubts)].toSorted(
    (left, right) => fieldPlace(left) - fieldPlace(right),
  );
  return (
    <>
      {says === null ? null : <Notice tone="problem">{says}</Notice>}
      {refusal === null ? null : (
        <Notice tone="problem" title={REFUSAL_WORDS[refusal].title}>
          <p>{REFUSAL_WORDS[refusal].says}</p>
          {refusal === "known" ? <WhereItIs ownLink={ownLink} /> : null}
          {refusal === "agreement" ? (
            <a href="#apply-agreement" className="text-link">
              To the new text
            </a>
          ) : null}
        </Notice>
      )}
      {fields.length === 0 ? null : (
        <Notice tone="problem" title="Please look at this; nothing was sent yet, and nothing is lost">
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
        To your application
      </Link>
    );
  return (
    <p className="mt-1">
      Its page is at the address that was shown when it was sent: look in your browser’s history for “Your application”.
      If it was made while signed in, sign in and open this page again. If neither was you, apply with another e-mail
      address, or write to the designer.
    </p>
  );
}
