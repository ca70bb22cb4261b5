import type { Metadata } from "next";
import { AboutForm } from "@/features/accounts/components/about-form";
import { PasswordForm } from "@/features/accounts/components/password-form";
import { SignOutButtons } from "@/features/accounts/components/sign-out-buttons";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";

export const metadata: Metadata = { title: "Your account" };

export default async function AccountPage() {
  const { name, email, unit } = await requireViewer();
  return (
    <Page title="Your account" intro={email} width="narrow">
      <Section title="About you">
        <AboutForm name={name} unit={unit} />
      </Section>
      <Section title="Password" intro="Changing your password signs you out everywhere else.">
        <PasswordForm email={email} passwordHint={PASSWORD_HINT} />
      </Section>
      <Section title="Sign out" intro="“Everywhere” signs you out in every browser, including this one.">
        <SignOutButtons />
      </Section>
    </Page>
  );
}
