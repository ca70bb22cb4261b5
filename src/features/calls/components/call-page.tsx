import Link from "next/link";
import type { ReactNode } from "react";
import { NavTabs } from "@/ui/nav-tabs";
import { Page } from "@/ui/page";
import type { LoadedCall } from "../loaders";

export type CallTab =
  "overview" | "gaps" | "changes" | "correct" | "swatches" | "testers" | "doubtful" | "yarn" | "fit" | "method";

const TABS: readonly { readonly tab: CallTab; readonly path: string; readonly label: string }[] = [
  { tab: "overview", path: "", label: "The call" },
  { tab: "gaps", path: "/gaps", label: "Gaps" },
  { tab: "changes", path: "/changes", label: "What to change" },
  { tab: "correct", path: "/correct", label: "Correct the pattern" },
  { tab: "swatches", path: "/swatches", label: "Swatches" },
  { tab: "testers", path: "/testers", label: "Testers" },
  { tab: "doubtful", path: "/doubtful", label: "Doubtful readings" },
  { tab: "yarn", path: "/yarn", label: "Yarn" },
  { tab: "fit", path: "/fit", label: "Fit" },
  { tab: "method", path: "/method", label: "How it is reckoned" },
];

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
  const { call, revision, invented } = loaded;
  const base = `/calls/${call.callId}`;
  const tabs = TABS.filter((page) => page.tab !== "correct" || tab === "correct").map((page) => ({
    href: `${base}${page.path}`,
    label: page.label,
    current: page.tab === tab,
  }));
  const above = (
    <>
      <Link href={`/patterns/${call.patternId}`} className="text-link">
        {revision.document.name}
      </Link>
      , revision {revision.number} · {call.title}
      {invented ? " · invented, for the demo" : null}
    </>
  );
  return (
    <Page title={title} above={above} intro={intro} actions={actions}>
      <NavTabs label="Pages of this call" tabs={tabs} />
      {children}
    </Page>
  );
}
