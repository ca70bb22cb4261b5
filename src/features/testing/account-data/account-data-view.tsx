import Link from "next/link";
import type { ReactNode } from "react";
import { Section } from "@/ui/section";
import type { AccountDeletion } from "./deletion-data";

interface AccountDataViewProps {
  readonly name: string;
  readonly email: string;
  readonly deletion: AccountDeletion;
  /** Who looked at it. */
  readonly looked: ReactNode;
}

/** What is stored about an account, who looked at it, and how to take it along or delete it. */
export function AccountDataView({ name, email, deletion, looked }: AccountDataViewProps) {
  const { patterns, tests, applications, helps } = deletion;
  return (
    <>
      <Section title="What is stored">
        <ul className="max-w-3xl list-disc space-y-1.5 pl-5 wrap-anywhere">
          <li>
            Your name (<bdi>{name}</bdi>), your e-mail address (<bdi>{email}</bdi>), the units you chose, and a code
            that your password can be checked with and not read from.
          </li>
          <li>
            {patterns.length === 1 ? "1 pattern" : `${patterns.length} patterns`} of yours with their tests, and your
            part in {helps === 1 ? "1 pattern" : `${helps} patterns`} of others.
          </li>
          <li>
            {tests === 1 ? "1 test" : `${tests} tests`} that you take part in and{" "}
            {applications === 1 ? "1 application" : `${applications} applications`}:{" "}
            <Link href="/testing" prefetch={false} className="text-link">
              your tests
            </Link>
            . Each has a page “Your data” of its own.
          </li>
          <li>
            What you saved and decided in patterns, with your name; which testers’ data you looked at, by day; and mail
            to you, whose words are deleted 14 days after it was sent.
          </li>
        </ul>
      </Section>
      <Section
        title="Who looked at it"
        intro="Designers whose tests you take part in or applied for, and their helpers, by day, in the last year."
      >
        {looked}
      </Section>
      <Section
        title="Download your data"
        intro="One file with everything that is stored about you. Each pattern has a file of its own, on its page."
      >
        <a href="/account/your-data/download" download className="button button-quiet">
          Download your data
        </a>
      </Section>
      <Section title="Delete your account" intro="You first see what is deleted and what stays for others.">
        <Link href="/account/delete" className="button button-quiet">
          Delete your account
        </Link>
      </Section>
    </>
  );
}
