import type { ReactNode } from "react";
import Link from "next/link";
import { DemoMark } from "@/ui/demo-mark";
import { NavTabs } from "@/ui/nav-tabs";
import { Page } from "@/ui/page";
import type { PatternPage } from "../loaders";
import { craftWord, sizesWords } from "../pattern-copy";

type PatternTab = "overview" | "measurements" | "pieces" | "edit" | "photos" | "revisions" | "errata" | "people";

interface PatternFrameProps {
  readonly page: PatternPage;
  readonly tab: PatternTab;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of every page of a pattern: its name, summary and tabs. */
export function PatternFrame({ page, tab, actions, children }: PatternFrameProps) {
  const { patternId, revision } = page;
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
    { key: "photos", href: `${home}/photos`, label: "Photos" },
    { key: "revisions", href: `${home}/revisions`, label: "Revisions" },
    { key: "errata", href: `${home}/errata`, label: "Errata" },
    { key: "people", href: `${home}/people`, label: "People" },
  ];
  const navigation = (
    <>
      <PatternLine page={page} isOverview={tab === "overview"} />
      <NavTabs
        label="Pages of this pattern"
        tabs={tabs.map(({ key, ...link }) => ({ ...link, current: key === tab }))}
      />
    </>
  );
  return (
    <Page
      title={tab === "overview" ? document.name : (tabs.find(({ key }) => key === tab)?.label ?? document.name)}
      navigation={navigation}
      actions={actions}
    >
      {children}
    </Page>
  );
}

/** `Saltmarsh Tee · crochet, 9 sizes from XS to 5X · revision 2`, in one line whatever its length. */
function PatternLine({ page, isOverview }: { readonly page: PatternPage; readonly isOverview: boolean }) {
  const { patternId, revision, isDemo } = page;
  const { name, craft, sizes } = revision.document;
  const what = `${craftWord(craft)}, ${sizesWords(sizes.map(({ label }) => label))}`;
  return (
    <p className="flex min-w-0 items-baseline gap-x-2 text-sm leading-6 text-soft *:truncate">
      {isOverview ? (
        <Link href="/patterns" className="text-link shrink-0">
          Your patterns
        </Link>
      ) : (
        <Link href={`/patterns/${patternId}`} className="text-link min-w-16">
          {name}
        </Link>
      )}
      <span aria-hidden="true">·</span>
      <span className="min-w-16">{what}</span>
      <span aria-hidden="true">·</span>
      <span className="shrink-0">revision {revision.number}</span>
      {isDemo ? <DemoMark /> : null}
    </p>
  );
}
