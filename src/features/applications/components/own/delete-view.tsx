import { ButtonLink } from "@/ui/button";
import { OneButtonForm } from "@/ui/one-button-form";
import { Sheet } from "@/ui/sheet";
import { deleteOwn } from "../../own-actions";
import type { OwnApplication } from "../../own-data";
import { ownState, type OwnState } from "../../own-state";

interface DeleteViewProps {
  readonly link: string;
  readonly application: OwnApplication;
}

/** What goes and what stays, asked before anything is deleted. */
export function DeleteView({ link, application }: DeleteViewProps) {
  const remains = whatRemains(ownState(application));
  return (
    <Sheet>
      <p>
        Your name, your e-mail address, your measurements and all that you wrote are deleted from{" "}
        <bdi>{application.callTitle}</bdi>. That cannot be undone, and the address of your application leads nowhere
        then.
      </p>
      {remains === null ? null : <p className="mt-3 font-semibold">{remains}</p>}
      <div className="mt-6 flex flex-wrap gap-3">
        <OneButtonForm
          action={deleteOwn}
          sends={{ link }}
          button="Delete it for good"
          waiting="Deleting …"
          look="main"
        />
        <ButtonLink href={`/applications/${link}`} look="quiet">
          Keep it
        </ButtonLink>
      </div>
    </Sheet>
  );
}

function whatRemains(state: OwnState): string | null {
  switch (state) {
    case "testing":
    case "stopped":
      return "What remains: you have accepted a place as a tester. That test keeps a copy of your name, your e-mail address and your measurements of its own, and all that you report; deleting the application changes nothing about it.";
    case "offered":
    case "too late":
    case "declined":
    case "taken back":
      return "The place that was offered to you goes with it, with the copy of your name and measurements that was made for it.";
    case "sent":
    case "withdrawn":
      return null;
  }
}
