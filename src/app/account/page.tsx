import type { Metadata } from "next";
import Link from "next/link";
import { AboutForm } from "@/features/accounts/components/about-form";
import { AddressSection } from "@/features/accounts/components/address-section";
import { PasswordForm } from "@/features/accounts/components/password-form";
import { ownAddress } from "@/features/accounts/data";
import { operatorAccess } from "@/features/accounts/operator/access";
import { MailServerSection } from "@/features/accounts/operator/mail-server-section";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { isMailOn } from "@/features/mail/mail-status";
import { mailServerState } from "@/features/mail/server-data";
import { readMailChoices } from "@/features/testing/reminders/choice-data";
import { MailChoicesForm } from "@/features/testing/reminders/choice-forms";
import { STILL_COMES } from "@/features/testing/reminders/reminder-choice-copy";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";
import { SubmitButton } from "@/ui/submit-button";
import { signOut, signOutEverywhere } from "../../features/accounts/actions";

export const metadata: Metadata = { title: "Your account" };

export default async function AccountPage({ searchParams }: PageProps<"/account">) {
  const viewer = await requireViewer();
  const { name, email, unit } = viewer;
  const [{ mailed }, operator] = await Promise.all([searchParams, operatorAccess(viewer)]);
  const mail = isMailOn() ? await readMailChoices(viewer) : null;
  return (
    <Page title="Your account" intro={email} width="narrow">
      <Section title="About you">
        <AboutForm name={name} unit={unit} />
      </Section>
      <AddressSection address={await ownAddress(viewer)} isMailOn={isMailOn()} isMailed={mailed === "proof"} />
      {mail === null ? null : (
        <Section title="Reminders" intro={STILL_COMES}>
          <MailChoicesForm {...mail} />
        </Section>
      )}
      <Section title="Password" intro="Changing your password signs you out everywhere else.">
        <PasswordForm email={email} passwordHint={PASSWORD_HINT} />
      </Section>
      <Section title="Your data" intro="What is stored about you, who looked at it, and how to delete it.">
        <Link href="/account/your-data" className="text-link">
          Your data
        </Link>
      </Section>
      {operator === null ? null : <MailServerSection isMailOn={isMailOn()} state={await mailServerState()} />}
      <Section title="Sign out" intro="“Everywhere” signs you out in every browser, including this one.">
        <SignOutButtons />
      </Section>
    </Page>
  );
}

function SignOutButtons() {
  return (
    <div className="flex flex-wrap gap-3">
      <form action={signOut}>
        <SubmitButton look="quiet" waiting="Signing out…">
          Sign out
        </SubmitButton>
      </form>
      <form action={signOutEverywhere}>
        <SubmitButton look="quiet" waiting="Signing out…">
          Sign out everywhere
        </SubmitButton>
      </form>
    </div>
  );
}
