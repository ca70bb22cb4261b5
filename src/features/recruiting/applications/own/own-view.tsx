import { CopyField } from "@/ui/copy-field";
import { Section } from "@/ui/section";
import type { OwnPage } from "../loaders";
import { isConsidered, ownState } from "./own-state";
import { momentWords } from "@/ui/moment-copy";
import { ViewList } from "../../views/view-list";
import { WhoSees } from "../who-sees";
import { StoredList, sizeLabel } from "./stored-list";
import { OwnControls } from "./own-controls";
import { OwnStateNotice } from "./own-state-notice";
import { WhatNext } from "./what-next";

/** An applicant's page: the state of the application, what is stored, and what the applicant can do. */
export function OwnView({ link, page }: { readonly link: string; readonly page: OwnPage }) {
  const { application, address, timeZone, isTaking, views } = page;
  const { designer, pattern, tester, agreement, agreedAt, hasAccount } = application;
  const state = ownState(application, new Date());
  return (
    <>
      <OwnStateNotice
        application={application}
        state={state}
        timeZone={timeZone}
        size={sizeLabel(pattern, tester?.size ?? "")}
      />
      <Section
        title="Keep this address"
        intro={
          hasAccount
            ? "Come back to this page with it, or by signing in. Anyone who has the address can open the page, so keep it to yourself."
            : "It is the only way back to this page. Anyone who has the address can open the page, so keep it to yourself."
        }
      >
        <CopyField id="own-address" label="Address of your application" text={address} button="Copy address" />
      </Section>
      {isConsidered(state) || state === "offered" ? (
        <Section title="What happens next">
          <WhatNext application={application} timeZone={timeZone} />
        </Section>
      ) : null}
      <Section title="Your data">
        <StoredList application={application} />
        <details className="mt-4">
          <summary className="inline-flex min-h-11 items-center text-thread underline underline-offset-4">
            The agreement, version {agreement.version}
          </summary>
          <p className="mb-2 text-sm text-soft">
            You agreed to it on {momentWords(agreedAt, { timeZone, edge: "time" })}.
          </p>
          <div className="rounded-sheet border border-line bg-sheet px-5 py-4 whitespace-pre-wrap wrap-anywhere">
            {agreement.text}
          </div>
        </details>
      </Section>
      <Section title="Who sees this">
        <WhoSees callId={application.callId} designer={designer} />
      </Section>
      <Section title="Who looked at it" intro="The designer and their helpers, by day, in the last year.">
        <ViewList {...{ views, timeZone }} />
      </Section>
      <Section title="Download your data" intro="One file with everything that is stored about your application.">
        <a href={`/applications/${link}/download`} download className="button button-quiet">
          Download your data
        </a>
      </Section>
      <Section title="Withdraw or delete">
        <OwnControls link={link} state={state} isTaking={isTaking} />
      </Section>
    </>
  );
}
