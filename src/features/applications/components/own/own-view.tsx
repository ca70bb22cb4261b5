import { CopyField } from "@/ui/copy-field";
import { Section } from "@/ui/section";
import type { OwnPage } from "../../loaders";
import { ownState } from "../../own-state";
import { momentWords } from "@/ui/moment-words";
import { WhoSees } from "../who-sees";
import { KeptList, sizeLabel } from "./kept-list";
import { OwnControls } from "./own-controls";
import { OwnStateNotice } from "./own-state-notice";
import { WhatNext } from "./what-next";

/** An applicant's own page: how her application stands, what is kept of it, and what she can do about it. */
export function OwnView({ link, page }: { readonly link: string; readonly page: OwnPage }) {
  const { application, address, timeZone, isTaking } = page;
  const { designer, pattern, tester, agreement, agreedAt, hasAccount } = application;
  const state = ownState(application);
  return (
    <>
      <OwnStateNotice application={application} timeZone={timeZone} size={sizeLabel(pattern, tester?.size ?? "")} />
      <Section
        title="Keep this address"
        intro={
          hasAccount
            ? "You come back to this page by it, or by your account. Whoever has the address can do the same: keep it to yourself."
            : "Nothing else leads back to this page. Whoever has it can read the page too: keep it to yourself."
        }
      >
        <CopyField id="own-address" label="Address of your application" text={address} button="Copy the address" />
      </Section>
      {state === "sent" || state === "offered" ? (
        <Section title="What happens next">
          <WhatNext application={application} timeZone={timeZone} />
        </Section>
      ) : null}
      <Section title="What is kept, word for word">
        <KeptList application={application} />
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
        <WhoSees designer={designer} />
      </Section>
      <Section title="Withdraw or delete">
        <OwnControls link={link} state={state} isTaking={isTaking} />
      </Section>
    </>
  );
}
