import Link from "next/link";
import type { ReactNode } from "react";
import { NavTabs } from "@/ui/nav-tabs";
import { Page } from "@/ui/page";
import type { LoadedCall } from "../loaders";

export type CallTab = "overview" | "gaps" | "correct";

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
  const tabs = [
    { href: base, label: "The call", current: tab === "overview" },
    { href: `${base}/gaps`, label: "Gaps", current: tab === "gaps" },
    ...(tab === "correct"
      ? [{ href: `${base}/correct`, label: "Correct the pattern", current: tab === "correct" }]
      : []),
  ];
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
