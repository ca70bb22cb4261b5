import { OneButtonForm } from "@/ui/one-button-form";
import { leave } from "./people-actions";
import { AskedFirst } from "@/ui/asked-first";

interface LeavePatternProps {
  readonly patternId: string;
  readonly hasConflictingDraft: boolean;
}

/** Lets a helper leave. */
export function LeavePattern({ patternId, hasConflictingDraft }: LeavePatternProps) {
  return (
    <div className="mt-2">
      <AskedFirst question="Leave this pattern">
        <p>
          You will no longer see it or its tests until the owner invites you again. Revisions that you saved keep your
          name.
          {hasConflictingDraft
            ? " Some of your edits conflict with a later save. Resolve them under “Edit” first."
            : null}
        </p>
        <OneButtonForm action={leave} sends={{ patternId }} button="Leave" waiting="Leaving …" look="main" />
      </AskedFirst>
    </div>
  );
}
