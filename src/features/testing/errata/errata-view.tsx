import Link from "next/link";
import type { PublishedVersion } from "@/features/patterns/published-data";
import { CopyText } from "@/ui/copy-text";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { CorrectionList } from "./correction-list";
import type { Erratum } from "./errata-data";
import { errataText } from "./errata-text";

interface ErrataViewProps {
  /** Address of the pattern. */
  readonly home: string;
  readonly patternName: string;
  /** The earliest first. */
  readonly versions: readonly PublishedVersion[];
  /** The newest first. */
  readonly errata: readonly Erratum[];
}

/** The published versions of a pattern, and what is wrong in them. */
export function ErrataView({ home, patternName, versions, errata }: ErrataViewProps) {
  if (versions.length === 0)
    return (
      <EmptyState title="Not published yet">
        <p>
          Open a{" "}
          <Link href={`${home}/revisions`} className="text-link">
            revision
          </Link>{" "}
          and mark it as published. Corrections after that are listed here as errata. Corrections made in the test stand
          with the revision that has them.
        </p>
      </EmptyState>
    );
  return (
    <>
      <Section
        title="Since the first version"
        actions={
          errata.length === 0 ? null : (
            <a href={`${home}/errata.csv`} download className="text-link">
              Download CSV
            </a>
          )
        }
        intro="Every correction that was published on a test’s Questions page since then."
      >
        {errata.length === 0 ? (
          <p className="text-soft">No errata so far.</p>
        ) : (
          <>
            <CorrectionList
              corrections={errata}
              before={({ version }) => <span className="font-semibold text-ink">Version {version} · </span>}
              below={(erratum) => <WhereItIs {...erratum} />}
            />
            <div className="mt-6 max-w-3xl">
              <CopyText id="errata" label="As text" text={errataText(patternName, errata)} button="Copy errata" />
            </div>
          </>
        )}
      </Section>
      <Section title="Published versions">
        <ul className="grid gap-1.5">
          {versions.toReversed().map(({ versionId, label, publishedAt, revisionNumber }) => (
            <li key={versionId} className="wrap-anywhere">
              <span className="font-semibold">Version {label}</span>, <Day at={publishedAt} />,{" "}
              <Link href={`${home}/revisions/${revisionNumber}`} className="text-link">
                revision {revisionNumber}
              </Link>
            </li>
          ))}
        </ul>
      </Section>
    </>
  );
}

function WhereItIs({ rightIn, foundInRevision, version }: Erratum) {
  return (
    <p className="mt-1 text-sm text-soft wrap-anywhere">
      {rightIn === null ? "No published version has it right yet." : `Right since version ${rightIn}.`}
      {foundInRevision === null
        ? null
        : ` It was found in revision ${foundInRevision}, which is later: check that version ${version} has the mistake.`}
    </p>
  );
}
