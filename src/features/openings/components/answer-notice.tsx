import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { OpeningAnswer } from "../actions";
import type { FieldFault } from "../read-typed";
import { fieldLabel } from "./field-label";
import { fieldId } from "./opening-form-state";

interface AnswerNoticeProps {
  readonly callId: string;
  readonly answer: OpeningAnswer | undefined;
  readonly isPublished: boolean;
}

/** What became of the last sending. */
export function AnswerNotice({ callId, answer, isPublished }: AnswerNoticeProps) {
  switch (answer?.status) {
    case undefined:
      return null;
    case "kept":
      return answer.faults.length === 0 ? (
        <Notice tone="done" title="Kept as a draft">
          <p>Nobody else sees it before you publish.</p>
        </Notice>
      ) : (
        <Notice tone="problem" title="Kept as you typed it, with something to mend">
          <FaultLinks faults={answer.faults} />
        </Notice>
      );
    case "published":
      return (
        <Notice tone="done" title="Published">
          <p>
            Everybody can read it at{" "}
            <Link href={`/open-calls/${callId}`} className="text-link">
              its page
            </Link>
            . What you change and save here is there at once.
          </p>
        </Notice>
      );
    case "taken back":
      return (
        <Notice tone="done" title="Taken back">
          <p>Its page is gone for everybody else until you publish again. Everything you wrote is kept.</p>
        </Notice>
      );
    case "faulty":
      return (
        <Notice
          tone="problem"
          title={isPublished ? "Not saved: what is published stays as it is" : "Not published yet"}
        >
          <p>{isPublished ? "Your changes are still in the form." : "What you typed is kept."} To mend:</p>
          <FaultLinks faults={answer.faults} />
        </Notice>
      );
    case "late":
      return (
        <Notice tone="problem" title="Somebody saved this opening while you were editing">
          <p>
            Your text is still in the form and not saved. What the others saved stands below each field that differs.
            Take over what you want, then save again: your form then replaces theirs.
          </p>
        </Notice>
      );
    case "failed":
      return <Notice tone="problem">{answer.says}</Notice>;
  }
}

/** Each fault with a way to its field. */
export function FaultLinks({ faults }: { readonly faults: readonly FieldFault[] }) {
  return (
    <ul className="mt-1 grid gap-1">
      {faults.map(({ field, says }) => (
        <li key={`${field} ${says}`} className="wrap-anywhere">
          <a href={`#${fieldId(field)}`} className="text-link">
            {fieldLabel(field)}
          </a>
          : {says}
        </li>
      ))}
    </ul>
  );
}
