import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { archive, close, openAgain, restore } from "./progress-actions";

interface CallClosingProps {
  readonly callId: string;
  readonly isOpen: boolean;
  readonly isArchived: boolean;
}

/** Closes a call after a confirmation; a closed one can be reopened or archived, and an archived one taken back. */
export function CallClosing({ callId, isOpen, isArchived }: CallClosingProps) {
  if (isArchived) return <Archived callId={callId} />;
  if (!isOpen) return <Closed callId={callId} />;
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

function Closed({ callId }: { readonly callId: string }) {
  return (
    <>
      <p className="mb-4">
        This test is closed. Nobody can apply, accept an invitation or send a report; everything can still be read.
      </p>
      <div className="flex flex-wrap items-baseline gap-x-6 gap-y-2">
        <OneButtonForm action={openAgain} sends={{ callId }} button="Reopen the test" waiting="Reopening …" />
        <AskedFirst question="Archive the test">
          <p>
            It leaves your home page and your lists, and is found under “Archived tests”. You and your testers can still
            read everything. Nothing is sent for it any more; messages that are still waiting are discarded. You can
            take it back at any time.
          </p>
          <OneButtonForm action={archive} sends={{ callId }} button="Archive the test" waiting="Archiving …" />
        </AskedFirst>
      </div>
    </>
  );
}

function Archived({ callId }: { readonly callId: string }) {
  return (
    <>
      <p className="mb-4">
        This test is archived. Everything can still be read, and nothing is sent for it. To reopen it, take it back
        first.
      </p>
      <OneButtonForm action={restore} sends={{ callId }} button="Take it back" waiting="Taking it back …" />
    </>
  );
}
