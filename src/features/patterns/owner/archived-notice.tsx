import { Day } from "@/ui/day";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import type { PatternPage } from "../loaders";
import { bringBack } from "./owner-actions";

/** Says that a pattern is archived; its owner can bring it back. */
export function ArchivedNotice({ page: { patternId, archivedAt, isOwner } }: { readonly page: PatternPage }) {
  if (archivedAt === null) return null;
  return (
    <Notice title="This pattern is archived">
      <p className="mb-3">
        Since <Day at={archivedAt} /> it is in nobody’s lists. No new test can be started.
      </p>
      {isOwner ? (
        <OneButtonForm action={bringBack} sends={{ patternId }} button="Bring it back" waiting="Bringing back …" />
      ) : null}
    </Notice>
  );
}
