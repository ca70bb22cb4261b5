import { OneButtonForm } from "@/ui/one-button-form";
import { leave } from "../../people-actions";
import { AskedFirst } from "@/ui/asked-first";

interface LeavePatternProps {
  readonly patternId: string;
  readonly hasLateSave: boolean;
}

/** A helper's own way out. */
export function LeavePattern({ patternId, hasLateSave }: LeavePatternProps) {
  return (
    <div className="mt-2">
      <AskedFirst question="Leave this pattern">
        <p>
          You see nothing of it and its calls from then on, until its owner invites you again. Revisions that you saved
          keep your name.
          {hasLateSave
            ? " Edits of yours that came too late for a save still wait under “Edit”: take or leave them first."
            : null}
        </p>
        <OneButtonForm action={leave} sends={{ patternId }} button="Leave" waiting="Leaving …" look="main" />
      </AskedFirst>
    </div>
  );
}
