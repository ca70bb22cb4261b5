import Link from "next/link";
import type { ReactNode } from "react";
import { isMailOn } from "@/features/mail/mail-status";
import { DemoMark } from "@/ui/demo-mark";
import { NavTabs } from "@/ui/nav-tabs";
import { Page } from "@/ui/page";
import { CALL_PAGES, CALL_PARTS, callPageHref, pagesOf, type CallPageKey } from "../call-pages";
import type { LoadedCall } from "../loaders";

interface CallPageProps {
  readonly loaded: LoadedCall;
  /** The page, or the one that a page below it belongs to. */
  readonly page: CallPageKey;
  /** Of a page below; else the page's own name. */
  readonly title?: string;
  readonly intro?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of a call's pages: the pattern, the test and its state once, and the ways to its other pages. */
export function CallPage({ loaded, page, title, intro, actions, children }: CallPageProps) {
  const { callId } = loaded.call;
  const part = CALL_PARTS.find(({ pages }) => pages.includes(page));
  const parts = CALL_PARTS.flatMap(({ name, pages: [first] }) =>
    first === undefined ? [] : [{ href: callPageHref(callId, first), label: name, current: name === part?.name }],
  );
  const pages = (part === undefined ? [] : pagesOf(part, isMailOn())).map((key) => ({
    href: callPageHref(callId, key),
    label: CALL_PAGES[key].name,
    current: key === page,
  }));
  const navigation = (
    <>
      <CallLine loaded={loaded} isOverview={page === "overview"} />
      <NavTabs label="Parts of this test" tabs={parts} look="parts" />
      {part !== undefined && pages.length > 1 ? <NavTabs label={part.name} tabs={pages} look="pages" /> : null}
    </>
  );
  return (
    <Page title={title ?? CALL_PAGES[page].name} navigation={navigation} intro={intro} actions={actions}>
      {children}
    </Page>
  );
}

/** `Saltmarsh Tee, revision 2 · Winter test · open`, in one line whatever its length. */
function CallLine({ loaded, isOverview }: { readonly loaded: LoadedCall; readonly isOverview: boolean }) {
  const { call, revision } = loaded;
  return (
    <p className="flex min-w-0 items-baseline gap-x-2 text-sm leading-6 text-soft *:truncate">
      <Link href={`/patterns/${call.patternId}`} className="text-link min-w-16">
        {revision.document.name}
      </Link>
      <span className="shrink-0 max-sm:hidden">revision {revision.number}</span>
      <span aria-hidden="true">·</span>
      {isOverview ? (
        <span className="min-w-16">{call.title}</span>
      ) : (
        <Link href={callPageHref(call.callId, "overview")} className="text-link min-w-16">
          {call.title}
        </Link>
      )}
      <span className="shrink-0 rounded-full border border-line-strong px-2">
        {call.status === "open" ? "Open" : call.isArchived ? "Archived" : "Closed"}
      </span>
      {call.isDemo ? <DemoMark /> : null}
    </p>
  );
}
