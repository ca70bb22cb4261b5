import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { close, openAgain } from "../../progress-actions";

/** Closing a call, asked first; a closed one can be opened again. */
export function CallClosing({ callId, isOpen }: { readonly callId: string; readonly isOpen: boolean }) {
  if (!isOpen)
    return (
      <>
        <p className="mb-4">This call is closed: nobody applies, accepts or sends, and all can be read.</p>
        <OneButtonForm action={openAgain} sends={{ callId }} button="Open it again" waiting="Opening …" />
      </>
    );
  return (
    <AskedFirst question="Close the call">
      <p>
        From then on nobody can apply, accept an invitation or send; drafts that were not sent stay with their testers.
        What has been sent stays, and is reckoned with. You can open the call again.
      </p>
      <OneButtonForm action={close} sends={{ callId }} button="Close the call" waiting="Closing …" look="main" />
    </AskedFirst>
  );
}
