import type { PublishedVersion } from "@/features/patterns/published-data";
import { AskedFirst } from "@/ui/asked-first";
import { Day } from "@/ui/day";
import { OneButtonForm } from "@/ui/one-button-form";
import { unpublishVersion } from "./publish-actions";
import { PublishForm } from "./publish-form";

interface PublishSectionProps {
  readonly patternId: string;
  readonly revisionNumber: number;
  /** Of the pattern. */
  readonly versions: readonly PublishedVersion[];
  readonly mayEdit: boolean;
}

/** Whether a revision is published, and for those who may edit the way to say so. */
export function PublishSection({ patternId, revisionNumber, versions, mayEdit }: PublishSectionProps) {
  const version = versions.find((each) => each.revisionNumber === revisionNumber);
  if (version === undefined)
    return mayEdit ? (
      <div className="mb-6">
        <PublishForm {...{ patternId, revisionNumber }} isFirst={versions.length === 0} />
      </div>
    ) : null;
  return (
    <div className="mb-6">
      <p className="wrap-anywhere">
        <span className="font-semibold">Published as version {version.label}</span>, <Day at={version.publishedAt} />
      </p>
      {mayEdit ? (
        <AskedFirst question="Not published after all">
          <p>The mark is removed, and errata are counted by the other versions. Messages that were sent stay sent.</p>
          <OneButtonForm
            action={unpublishVersion}
            sends={{ patternId, versionId: version.versionId }}
            button="Remove the mark"
            waiting="Removing …"
          />
        </AskedFirst>
      ) : null}
    </div>
  );
}
