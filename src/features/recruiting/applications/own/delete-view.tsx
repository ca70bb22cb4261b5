import { ButtonLink } from "@/ui/button";
import { OneButtonForm } from "@/ui/one-button-form";
import { Sheet } from "@/ui/sheet";
import { deleteOwn } from "./own-actions";
import type { OwnApplication } from "./own-data";
import { ownState, type OwnState } from "./own-state";

interface DeleteViewProps {
  readonly link: string;
  readonly application: OwnApplication;
}

/** What is deleted and what stays, with a confirmation. */
export function DeleteView({ link, application }: DeleteViewProps) {
  const remains = whatRemains(ownState(application, new Date()));
  return (
    <Sheet>
      <p>
        This deletes your name, your e-mail address, your measurements and everything you wrote from{" "}
        <bdi>{application.callTitle}</bdi>. It cannot be undone, and the address of your application stops working.
      </p>
      {remains === null ? null : <p className="mt-3 font-semibold">{remains}</p>}
      <div className="mt-6 flex flex-wrap gap-3">
        <OneButtonForm action={deleteOwn} sends={{ link }} button="Delete for good" waiting="Deleting …" look="main" />
        <ButtonLink href={`/applications/${link}`} look="quiet">
          Do not delete
        </ButtonLink>
      </div>
    </Sheet>
  );
}

function whatRemains(state: OwnState): string | null {
  switch (state) {
    case "testing":
    case "stopped":
      return "You are a tester in this test. The test has its own copy of your name, e-mail address and measurements, and your reports; deleting the application does not change them. You can delete them on your page of the test.";
    case "offered":
    case "too late":
    case "declined":
    case "taken back":
      return "Your spot, and the copy of your name and measurements that was made for it, are deleted too.";
    case "closed":
    case "no spot yet":
    case "not chosen":
    case "sent":
    case "waiting":
    case "withdrawn":
      return null;
  }
}
