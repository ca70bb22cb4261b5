import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { AskLinkForm } from "@/features/accounts/email-links/ask-link-form";
import { isMailOn } from "@/features/mail/mail-status";
import { sameOriginPath, withNext } from "@/server/same-origin-path";
import { optionalViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Sign in by e-mail" };

export default async function SignInByMailPage({ searchParams }: PageProps<"/sign-in/by-mail">) {
  const next = sameOriginPath((await searchParams).next?.toString());
  const viewer = await optionalViewer();
  if (!isMailOn()) notFound();
  if (viewer !== null) redirect(next);
  return (
    <Page
      title="Sign in by e-mail"
      intro="Enter the address of your account. You get a link that signs you in; there you can also choose a new password."
      width="narrow"
    >
      <AskLinkForm asksTo="sign-in" next={next} />
      <p className="mt-8 text-soft">
        Know your password?{" "}
        <Link href={withNext("/sign-in", next)} className="text-link">
          Sign in with it
        </Link>
      </p>
    </Page>
  );
}
