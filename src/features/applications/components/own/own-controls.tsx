import { ButtonLink } from "@/ui/button";
import { OneButtonForm } from "@/ui/one-button-form";
import { takeUpOwn, withdrawOwn } from "../../own-actions";
import { canWithdraw, type OwnState } from "../../own-state";

interface OwnControlsProps {
  readonly link: string;
  readonly state: OwnState;
  /** The call takes applications still. */
  readonly isTaking: boolean;
}

/** To take it back, to let it stand again, to have it deleted. */
export function OwnControls({ link, state, isTaking }: OwnControlsProps) {
  return (
    <div className="space-y-6">
      {canWithdraw(state) ? (
        <div>
          <p className="mb-3">
            {state === "sent"
              ? "Withdrawn, it takes part in nothing more, and your measurements are looked at by nobody. While others can apply you can take it up again."
              : "With it you decline the place that was offered to you, so that somebody else can have it. That is for good."}
          </p>
          <OneButtonForm
            action={withdrawOwn}
            sends={{ link }}
            button={state === "sent" ? "Withdraw the application" : "Withdraw, and decline the place"}
            waiting="Withdrawing …"
          />
        </div>
      ) : null}
      {state === "withdrawn" ? (
        isTaking ? (
          <OneButtonForm
            action={takeUpOwn}
            sends={{ link }}
            button="Take it up again"
            waiting="Taking it up …"
            look="main"
          />
        ) : (
          <p>It cannot be taken up again: the call takes no applications now.</p>
        )
      ) : null}
      <div>
        <p className="mb-3">To change something, delete the application and send another while others can apply.</p>
        <ButtonLink href={`/applications/${link}/delete`} look="quiet">
          Delete the application …
        </ButtonLink>
      </div>
    </div>
  );
}
