import { OneButtonForm } from "@/ui/one-button-form";
import type { HelperRole } from "../access";
import { changeHelper, removeHelper } from "./people-actions";
import type { Person } from "./people-data";
import { AskedFirst } from "@/ui/asked-first";

interface HelperControlsProps {
  readonly patternId: string;
  readonly helper: Person;
  readonly role: HelperRole;
}

/** What the owner can change about a helper: their role, or their access. */
export function HelperControls({
  patternId,
  helper: { accountId, name, hasConflictingDraft },
  role,
}: HelperControlsProps) {
  const sends = { patternId, accountId };
  const other = role === "editor" ? "viewer" : "editor";
  return (
    <div className="mt-3 flex flex-wrap items-start gap-x-6 gap-y-2">
      <OneButtonForm
        action={changeHelper}
        sends={{ ...sends, role: other }}
        button={other === "editor" ? "Allow editing" : "Make view-only"}
        waiting="Changing …"
        about={name}
      />
      <AskedFirst question="Remove" about={name}>
        <p>
          <bdi>{name}</bdi> will no longer see this pattern and its tests. Saved revisions keep the name, and unsaved
          edits stay under “Edit”.
          {hasConflictingDraft
            ? " Some of their edits are in conflict with a later save. They are stored and come back if you invite them again to edit."
            : null}
        </p>
        <OneButtonForm
          action={removeHelper}
          sends={sends}
          button="Remove"
          waiting="Removing …"
          about={name}
          look="main"
        />
      </AskedFirst>
    </div>
  );
}
