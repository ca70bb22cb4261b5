import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import type { ComparePage } from "./compare-loaders";
import { CompareForm } from "./compare-form";
import { ComparedRevision } from "./compared-revision";
import { RevisionComparison } from "./revision-comparison";

/** Two revisions side by side: which, whose and why, and what differs. */
export function CompareView({ page }: { readonly page: ComparePage }) {
  const { patternId, viewer, revisions, from, to, says } = page;
  const home = `/patterns/${patternId}`;
  return (
    <>
      <Section title="Compare two revisions">
        {revisions.length > 1 ? (
          <CompareForm address={`${home}/revisions/compare`} revisions={revisions} from={from} to={to} />
        ) : null}
        {says === null ? null : <Notice>{says}</Notice>}
        {from && to && says === null ? (
          <div className="grid gap-4 sm:grid-cols-2">
            <ComparedRevision home={home} side="From" revision={from} />
            <ComparedRevision home={home} side="To" revision={to} />
          </div>
        ) : null}
      </Section>
      {from && to && says === null ? (
        <RevisionComparison before={from.document} after={to.document} unit={viewer.unit} />
      ) : null}
    </>
  );
}
