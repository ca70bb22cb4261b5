import Link from "next/link";
import type { ReactNode } from "react";
import { NavTabs } from "@/ui/nav-tabs";
import { Page } from "@/ui/page";
import type { LoadedCall } from "../loaders";

interface TabPage {
  readonly path: string;
  readonly label: string;
}

const RUNNING = {
  overview: { path: "", label: "The call" },
  opening: { path: "/opening", label: "Opening" },
  applications: { path: "/applications", label: "Applications" },
  places: { path: "/places", label: "Places" },
  progress: { path: "/progress", label: "Progress" },
  questions: { path: "/questions", label: "Questions" },
} as const satisfies Record<string, TabPage>;

const READING = {
  gaps: { path: "/gaps", label: "Gaps" },
  changes: { path: "/changes", label: "What to change" },
  correct: { path: "/correct", label: "Correct the pattern" },
  swatches: { path: "/swatches", label: "Swatches" },
  testers: { path: "/testers", label: "Testers" },
  doubtful: { path: "/doubtful", label: "Doubtful readings" },
  yarn: { path: "/yarn", label: "Yarn" },
  fit: { path: "/fit", label: "Fit" },
  method: { path: "/method", label: "How it is reckoned" },
} as const satisfies Record<string, TabPage>;

export type CallTab = keyof typeof RUNNING | keyof typeof READING;

interface CallPageProps {
  readonly loaded: LoadedCall;
  readonly tab: CallTab;
  readonly title: string;
  readonly intro?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of a call's pages: where one is, the title, and the ways to its other pages. */
export function CallPage({ loaded, tab, title, intro, actions, children }: CallPageProps) {
  const { call, revision } = loaded;
  const base = `/calls/${call.callId}`;
  const tabsOf = (pages: Readonly<Record<string, TabPage>>) =>
    Object.entries(pages)
      .filter(([key]) => key !== "correct" || tab === "correct")
      .map(([key, { path, label }]) => ({ href: `${base}${path}`, label, current: key === tab }));
  const above = (
    <>
      <Link href={`/patterns/${call.patternId}`} className="text-link">
        {revision.document.name}
      </Link>
      , revision {revision.number} · {call.title}
      {call.invented ? " · invented, for the demo" : null}
    </>
  );
  return (
    <Page title={title} above={above} intro={intro} actions={actions}>
      <div className="mb-8 [&>nav]:mb-0">
        <NavTabs label="To run this call" tabs={tabsOf(RUNNING)} />
        <NavTabs label="What came of it" tabs={tabsOf(READING)} />
      </div>
      {children}
    </Page>
  );
}
