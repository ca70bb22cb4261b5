import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { SignUpForm } from "@/features/accounts/components/sign-up-form";
import { AskLinkForm } from "@/features/accounts/email-links/ask-link-form";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { isMailOn } from "@/features/mail/mail-status";
import { sameOriginPath, withNext } from "@/server/same-origin-path";
import { optionalViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Create an account" };

interface SignUpPageProps {
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
}

export default async function SignUpPage({ searchParams }: SignUpPageProps) {
  const next = sameOriginPath((await searchParams).next?.toString());
  if ((await optionalViewer()) !== null) redirect(next);
  return (
    <Page
      title="Create an account"
      intro={`For designers and the people who help them.${isMailOn() ? " You get a link, and choose your name and password there." : ""}`}
      width="narrow"
    >
      {isMailOn() ? (
        <AskLinkForm asksTo="sign-up" next={next} />
      ) : (
        <SignUpForm passwordHint={PASSWORD_HINT} next={next} />
      )}
      <p className="mt-8 text-soft">
        Already have an account?{" "}
        <Link href={withNext("/sign-in", next)} className="text-link">
          Sign in
        </Link>
      </p>
    </Page>
  );
}
