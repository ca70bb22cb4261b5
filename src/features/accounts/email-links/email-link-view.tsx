import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";
import { PASSWORD_HINT } from "../password-hint";
import { AskLinkForm } from "./ask-link-form";
import { ENDED } from "./email-link-copy";
import type { EmailLinkPage } from "./email-link-loaders";
import { LinkAddressForm, LinkPasswordForm, LinkSignInForm, LinkSignUpForm } from "./link-forms";

interface EmailLinkViewProps {
  readonly link: string;
  readonly page: EmailLinkPage;
}

/** What a mailed link is for, or why it cannot be used and what to do then. */
export function EmailLinkView({ link, page }: EmailLinkViewProps) {
  const { end, account, address } = page;
  if (end !== null) return <Ended end={end} page={page} />;
  if (page.purpose === "change_address" && account !== null)
    return (
      <Page title="Use this address" intro={address} width="narrow">
        <p className="mb-6">
          The account of <bdi>{account.name}</bdi> gets this address. You then sign in with it, and mail comes here. The
          address that it has now is told.
        </p>
        <LinkAddressForm link={link} />
      </Page>
    );
  if (account === null)
    return (
      <Page title="Create your account" intro={address} width="narrow">
        <LinkSignUpForm link={link} email={address} passwordHint={PASSWORD_HINT} />
      </Page>
    );
  const isOwn = page.viewer?.accountId === account.id;
  if (!account.isProven && !isOwn) return <ChoosePassword link={link} address={address} />;
  return (
    <Page
      title={account.isProven ? "Sign in" : "Confirm your address"}
      intro={
        <>
          <bdi>{account.name}</bdi>, {address}
        </>
      }
      width="narrow"
    >
      <LinkSignInForm link={link} button={account.isProven ? "Sign in" : "Confirm address"} />
      <Section
        title="Forgot your password?"
        intro="Choose a new one instead. It signs you out everywhere else, and this link is then used."
      >
        <LinkPasswordForm link={link} email={address} passwordHint={PASSWORD_HINT} />
      </Section>
    </Page>
  );
}

function ChoosePassword({ link, address }: { readonly link: string; readonly address: string }) {
  return (
    <Page title="Choose a new password" intro={address} width="narrow">
      <p className="mb-6">
        This address has not been confirmed before. Choose a new password, so that only you know it. You are then signed
        out everywhere else.
      </p>
      <LinkPasswordForm link={link} email={address} passwordHint={PASSWORD_HINT} />
    </Page>
  );
}

function Ended({
  end,
  page: { purpose, account, address, isMailOn },
}: {
  readonly end: keyof typeof ENDED;
  readonly page: EmailLinkPage;
}) {
  const { title, text } = ENDED[end];
  if (purpose !== "sign_in")
    return (
      <Page title={title} intro="You can ask for another one on your account’s page." width="narrow">
        <ButtonLink href="/account">Your account</ButtonLink>
      </Page>
    );
  return (
    <Page title={title} intro={text} width="narrow">
      {isMailOn ? (
        <AskLinkForm asksTo={account === null && end !== "used" ? "sign-up" : "sign-in"} email={address} />
      ) : (
        <ButtonLink href="/sign-in">Sign in</ButtonLink>
      )}
    </Page>
  );
}
