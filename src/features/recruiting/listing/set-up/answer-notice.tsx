import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { ListingAnswer } from "./listing-actions";
import type { FieldFault } from "../read-typed";
import { fieldLabel } from "./field-label";
import { fieldId } from "./listing-form-state";

interface AnswerNoticeProps {
  readonly callId: string;
  readonly answer: ListingAnswer | undefined;
  readonly isPublished: boolean;
}

/** The result of the last save. */
export function AnswerNotice({ callId, answer, isPublished }: AnswerNoticeProps) {
  switch (answer?.status) {
    case undefined:
      return null;
    case "saved":
      return answer.faults.length === 0 ? (
        <Notice tone="done" title="Draft saved">
          <p>Only you and your helpers see it until you publish it.</p>
        </Notice>
      ) : (
        <Notice tone="problem" title="Draft saved, with problems to fix">
          <FaultLinks faults={answer.faults} />
        </Notice>
      );
    case "published":
      return (
        <Notice tone="done" title="Published">
          <p>
            Everybody can read it on the{" "}
            <Link href={`/open-calls/${callId}`} className="text-link">
              tester call
            </Link>
            . Changes that you save here appear there at once.
          </p>
        </Notice>
      );
    case "unpublished":
      return (
        <Notice tone="done" title="Unpublished">
          <p>Nobody else can see its page until you publish it again. Everything you wrote is saved.</p>
        </Notice>
      );
    case "faulty":
      return (
        <Notice
          tone="problem"
          title={isPublished ? "Not saved: the published version stays as it is" : "Not published yet"}
        >
          <p>{isPublished ? "Your changes are still in the form." : "What you typed is saved as a draft."} To fix:</p>
          <FaultLinks faults={answer.faults} />
        </Notice>
      );
    case "conflict":
      return (
        <Notice tone="problem" title="Somebody else saved this listing while you were editing">
          <p>
            Your text is still in the form, but not saved. Their text is shown below each field that differs. Copy what
            you want to keep, then save: your form replaces theirs.
          </p>
        </Notice>
      );
    case "failed":
      return <Notice tone="problem">{answer.message}</Notice>;
  }
}

/** The faults, each with a link to its field. */
export function FaultLinks({ faults }: { readonly faults: readonly FieldFault[] }) {
  return (
    <ul className="mt-1 grid gap-1">
      {faults.map(({ field, message }) => (
        <li key={`${field} ${message}`} className="wrap-anywhere">
          <a href={`#${fieldId(field)}`} className="text-link">
            {fieldLabel(field)}
          </a>
          : {message}
        </li>
      ))}
    </ul>
  );
}
