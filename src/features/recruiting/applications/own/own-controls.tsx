import { ButtonLink } from "@/ui/button";
import { OneButtonForm } from "@/ui/one-button-form";
import { takeUpOwn, withdrawOwn } from "./own-actions";
import { canWithdraw, isConsidered, type OwnState } from "./own-state";

interface OwnControlsProps {
  readonly link: string;
  readonly state: OwnState;
  /** The call still takes applications. */
  readonly isTaking: boolean;
}

/** Buttons to withdraw, resubmit or delete an application. */
export function OwnControls({ link, state, isTaking }: OwnControlsProps) {
  return (
    <div className="space-y-6">
      {canWithdraw(state) ? (
        <div>
          <p className="mb-3">
            {isConsidered(state)
              ? `If you withdraw, your application is no longer considered and nobody sees your measurements.${isTaking ? " While applications are open you can resubmit it." : ""}`
              : "If you withdraw, you also decline the spot you were offered, so that somebody else can have it. You cannot undo this."}
          </p>
          <OneButtonForm
            action={withdrawOwn}
            sends={{ link }}
            button={isConsidered(state) ? "Withdraw application" : "Withdraw and decline the spot"}
            waiting="Withdrawing …"
          />
        </div>
      ) : null}
      {state === "withdrawn" ? (
        isTaking ? (
          <OneButtonForm
            action={takeUpOwn}
            sends={{ link }}
            button="Resubmit application"
            waiting="Resubmitting …"
            look="main"
          />
        ) : (
          <p>You cannot resubmit it: this test takes no applications now.</p>
        )
      ) : null}
      <div>
        <p className="mb-3">
          To change something, delete the application and send a new one while applications are open.
        </p>
        <ButtonLink href={`/applications/${link}/delete`} look="quiet">
          Delete application …
        </ButtonLink>
      </div>
    </div>
  );
}
