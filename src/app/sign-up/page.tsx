import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { SignUpForm } from "@/features/accounts/components/sign-up-form";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { optionalViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Make an account" };

export default async function SignUpPage() {
  if ((await optionalViewer()) !== null) redirect("/");
  return (
    <Page title="Make an account" intro="For designers, and for those who help them." width="narrow">
      <SignUpForm passwordHint={PASSWORD_HINT} />
      <p className="mt-8 text-soft">
        You have one?{" "}
        <Link href="/sign-in" className="text-link">
          Sign in
        </Link>
      </p>
    </Page>
  );
}
