import Link from "next/link";
import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import type { PatternPage } from "../loaders";
import { archive, duplicate } from "./owner-actions";

interface OwnerControlsProps {
  readonly page: PatternPage;
  /** Identifies the form of the copy, so that sending it twice makes one. */
  readonly formKey: string;
  readonly hasOpenTest: boolean;
}

/** What a pattern's owner may do with it as a whole. */
export function OwnerControls({ page: { patternId, archivedAt }, formKey, hasOpenTest }: OwnerControlsProps) {
  return (
    <Section title="Copy, archive or delete">
      <div className="flex flex-wrap items-start gap-x-8 gap-y-2">
        <OneButtonForm
          action={duplicate}
          sends={{ patternId, formKey }}
          button="Duplicate this pattern"
          waiting="Copying …"
        />
        {archivedAt === null ? (
          <AskedFirst question="Archive it">
            {hasOpenTest ? (
              <p>One of its tests is open. Close the test on its Progress page, then archive the pattern.</p>
            ) : (
              <>
                <p>
                  It leaves your lists and your helpers’ lists. Everything in it and in its tests can still be read, and
                  you can bring it back at any time.
                </p>
                <OneButtonForm
                  action={archive}
                  sends={{ patternId }}
                  button="Archive"
                  waiting="Archiving …"
                  look="main"
                />
              </>
            )}
          </AskedFirst>
        ) : null}
        <Link
          href={`/patterns/${patternId}/delete`}
          className="text-link inline-flex min-h-11 items-center py-2"
          prefetch={false}
        >
          Delete it …
        </Link>
      </div>
    </Section>
  );
}
