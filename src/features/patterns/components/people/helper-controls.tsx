import { OneButtonForm } from "@/ui/one-button-form";
import type { HelperRole } from "../../access";
import { changeHelper, removeHelper } from "../../people-actions";
import type { Person } from "../../people-data";
import { AskedFirst } from "@/ui/asked-first";

interface HelperControlsProps {
  readonly patternId: string;
  readonly helper: Person;
  readonly role: HelperRole;
}

/** What the owner can do about a helper: let her do more or less, or end it. */
export function HelperControls({ patternId, helper: { accountId, name, hasLateSave }, role }: HelperControlsProps) {
  const sends = { patternId, accountId };
  const other = role === "editor" ? "viewer" : "editor";
  return (
    <div className="mt-3 flex flex-wrap items-start gap-x-6 gap-y-2">
      <OneButtonForm
        action={changeHelper}
        sends={{ ...sends, role: other }}
        button={other === "editor" ? "Let them edit" : "Let them only look"}
        waiting="Changing …"
        about={name}
      />
      <AskedFirst question="Remove" about={name}>
        <p>
          <bdi>{name}</bdi> sees nothing of this pattern and its calls from then on. Saved revisions keep the name, and
          edits that are not a revision yet stay under “Edit”.
          {hasLateSave
            ? " Some edits came too late for a save: they are kept, and come back with a new invitation that lets them edit."
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
