import type { ReactNode } from "react";
import Link from "next/link";
import { NavTabs } from "@/ui/nav-tabs";
import { Page } from "@/ui/page";
import type { PatternPage } from "../loaders";
import { craftWord } from "./pattern-words";

export type PatternTab = "overview" | "measurements" | "pieces" | "edit" | "revisions" | "people";

interface PatternFrameProps {
  readonly page: PatternPage;
  readonly tab: PatternTab;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of every page of a pattern: its name, summary and tabs. */
export function PatternFrame({ page, tab, actions, children }: PatternFrameProps) {
  const { patternId, revision, invented } = page;
  const { document } = revision;
  const home = `/patterns/${patternId}`;
  const [measurement] = document.measurements;
  const tabs = [
    { key: "overview", href: home, label: "Overview" },
    ...(measurement
      ? [{ key: "measurements", href: `${home}/measurements/${measurement.id}`, label: "Measurements" }]
      : []),
    { key: "pieces", href: `${home}/pieces`, label: "Pieces" },
    { key: "edit", href: `${home}/edit`, label: page.mayEdit ? "Edit" : "Numbers" },
    { key: "revisions", href: `${home}/revisions`, label: "Revisions" },
    { key: "people", href: `${home}/people`, label: "People" },
  ];
  return (
    <Page
      title={document.name}
      above={
        <Link href="/patterns" className="text-link">
          Patterns
        </Link>
      }
      intro={`${craftWord(document.craft)}, ${sizesWords(document.sizes.map(({ label }) => label))}. Revision ${revision.number}.`}
      actions={actions}
    >
      {invented ? <InventedMark /> : null}
      <NavTabs
        label="Pages of this pattern"
        tabs={tabs.map(({ key, ...link }) => ({ ...link, current: key === tab }))}
      />
      {children}
    </Page>
  );
}

/** Demo data is marked wherever it is shown. */
export function InventedMark() {
  return (
    <p className="mb-4 inline-block rounded-full border border-line-strong px-3 py-0.5 text-sm text-soft">
      Demo: pattern, people and numbers are invented
    </p>
  );
}

/** `9 sizes from XS to 5X`. */
export function sizesWords(labels: readonly string[]): string {
  const [first, last] = [labels[0], labels.at(-1)];
  return labels.length === 1 ? `one size, ${first}` : `${labels.length} sizes from ${first} to ${last}`;
}
