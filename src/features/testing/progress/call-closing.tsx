import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { close, openAgain } from "./progress-actions";

/** Closes a call after a confirmation; a closed one can be reopened. */
export function CallClosing({ callId, isOpen }: { readonly callId: string; readonly isOpen: boolean }) {
  if (!isOpen)
    return (
      <>
        <p className="mb-4">
          This test is closed. Nobody can apply, accept an invitation or send a report; everything can still be read.
        </p>
        <OneButtonForm action={openAgain} sends={{ callId }} button="Reopen the test" waiting="Reopening …" />
      </>
    );
  return (
    <AskedFirst question="Close the test">
      <p>
        After that nobody can apply, accept an invitation or send a report. Testers keep drafts they have not sent.
        Reports that were sent stay and count. You can reopen the test.
      </p>
      <OneButtonForm action={close} sends={{ callId }} button="Close the test" waiting="Closing …" look="main" />
    </AskedFirst>
  );
}
