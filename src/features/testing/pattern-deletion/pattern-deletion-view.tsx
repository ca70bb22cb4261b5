import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { goesWithPattern, patternStays } from "../account-data/deletion-copy";
import { RunningLinks } from "../account-data/running-links";
import type { PatternDeletion } from "./pattern-deletion-data";
import { PatternDeletionForm } from "./pattern-deletion-form";

/** What is deleted with a pattern and what stays, and then the way to do it. */
export function PatternDeletionView({ deletion: { pattern, running } }: { readonly deletion: PatternDeletion }) {
  return (
    <>
      <Section title="What is deleted">
        <p className="max-w-3xl wrap-anywhere">
          The pattern <bdi className="font-semibold">{pattern.name}</bdi>
          {goesWithPattern(pattern)}
        </p>
      </Section>
      <Section title="What stays">
        <p className="max-w-3xl">
          Files that you or your helpers have exported, copies of the pattern, and messages that people have already
          received. If you only want it out of your lists, archive it instead.
        </p>
      </Section>
      <Section title="Delete for good">
        {running.length > 0 ? (
          <Notice title="The pattern cannot be deleted yet">
            <p>{patternStays(running)}</p>
            <RunningLinks running={running} />
          </Notice>
        ) : (
          <>
            <p className="mb-4">This cannot be undone.</p>
            <PatternDeletionForm patternId={pattern.patternId} />
          </>
        )}
      </Section>
    </>
  );
}
