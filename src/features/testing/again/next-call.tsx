import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { startNext } from "./again-actions";

interface NextCallProps {
  readonly callId: string;
  /** The newest that testers here work from; null where nobody does. */
  readonly testedRevision: number | null;
  /** The pattern's newest. */
  readonly newestRevision: number;
  /** Made once for the form. */
  readonly formKey: string;
}

/** The way from a test to one of a later revision. */
export function NextCall({ callId, testedRevision, newestRevision, formKey }: NextCallProps) {
  if (testedRevision === null || testedRevision >= newestRevision) return null;
  return (
    <AskedFirst question="Test the next revision">
      <p>
        The testers here work from revision {testedRevision}; the newest is revision {newestRevision}. A new test starts
        as a draft with what this listing says, without its dates. You can then invite testers of this test again, and
        take new ones.
      </p>
      <p>Reports of the two tests count together, each with the numbers worked there; you can change that in Set up.</p>
      <OneButtonForm
        action={startNext}
        sends={{ callId, formKey }}
        button={`New test of revision ${newestRevision}`}
        waiting="One moment …"
      />
    </AskedFirst>
  );
}
