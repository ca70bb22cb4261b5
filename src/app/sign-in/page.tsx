import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { DemoSignIn } from "@/features/accounts/components/demo-sign-in";
import { SignInForm } from "@/features/accounts/components/sign-in-form";
import { SeeAsTester } from "@/features/testing/demo/see-as-tester";
import { shownTesterLink } from "@/features/testing/demo/shown-tester-data";
import { ForgetPages } from "@/features/testing/reading/forget-pages";
import { isMailOn } from "@/features/mail/mail-status";
import { environment } from "@/server/environment";
import { sameOriginPath, withNext } from "@/server/same-origin-path";
import { optionalViewer } from "@/server/viewer";
import { Notice } from "@/ui/notice";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Sign in" };

interface SignInPageProps {
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
}

export default async function SignInPage({ searchParams }: SignInPageProps) {
  const asked = await searchParams;
  const next = sameOriginPath(asked.next?.toString());
  if ((await optionalViewer()) !== null) redirect(next);
  const fresh = asked.new?.toString();
  return (
    <Page title="Sign in" width="narrow">
      <ForgetPages />
      {environment().SIZEWRIGHT_DEMO === "on" ? <Demo next={next} /> : null}
      {fresh === undefined ? null : (
        <Notice tone="plain" title="Sign in with your password">
          If there is already an account for {fresh}, sign in with its password.
        </Notice>
      )}
      <SignInForm email={fresh ?? ""} next={next} />
      {isMailOn() ? (
        <p className="mt-8 text-soft">
          Testing without an account?{" "}
          <Link href="/lost-link" className="text-link">
            Get your links again
          </Link>
        </p>
      ) : null}
      {isMailOn() ? (
        <p className="mt-8 text-soft">
          Forgot your password?{" "}
          <Link href={withNext("/sign-in/by-mail", next)} className="text-link">
            Sign in by e-mail
          </Link>
        </p>
      ) : null}
      <p className="mt-8 text-soft">
        New here?{" "}
        <Link href={withNext("/sign-up", next)} className="text-link">
          Create an account
        </Link>
      </p>
    </Page>
  );
}

/** The two ways into the invented demo: as its designer, and as one of its testers. */
async function Demo({ next }: { readonly next: string }) {
  const link = await shownTesterLink();
  return (
    <>
      <DemoSignIn next={next} />
      {link === null ? null : <SeeAsTester link={link} />}
    </>
  );
}
