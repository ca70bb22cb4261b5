import { CopyField } from "@/ui/copy-field";
import { Day } from "@/ui/day";
import type { HelperRole } from "../access";
import { ROLE_WORDS } from "./role-copy";

interface NewLinkProps {
  readonly link: string;
  readonly role: HelperRole;
  readonly note: string;
  readonly expiresAt: Date;
}

/** A link that was just created: copy it here, it is never shown again. */
export function NewLink({ link, role, note, expiresAt }: NewLinkProps) {
  return (
    <div className="mb-6 rounded-md border-l-4 border-ink bg-sheet px-4 py-3">
      <p className="font-semibold">
        <span aria-hidden="true">✓ </span>Link created. Copy it now: it is not shown again.
      </p>
      <p className="mb-3 wrap-anywhere">
        {note ? (
          <>
            For <bdi>{note}</bdi>.{" "}
          </>
        ) : null}
        {ROLE_WORDS[role]}. It works for one person, until <Day at={expiresAt} />. Send it yourself: Sizewright sends no
        email.
      </p>
      <CopyField id="new-link" label="The link" text={link} button="Copy link" />
    </div>
  );
}
