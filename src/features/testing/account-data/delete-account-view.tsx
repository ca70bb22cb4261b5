import type { ReactNode } from "react";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { accountStays, counted, goesWithPattern } from "./deletion-copy";
import type { AccountDeletion } from "./deletion-data";
import { RunningLinks } from "./running-links";

interface DeleteAccountViewProps {
  readonly deletion: AccountDeletion;
  /** How it is confirmed. */
  readonly children: ReactNode;
}

/** What is deleted with an account and what stays for others, and then the way to do it. */
export function DeleteAccountView({ deletion, children }: DeleteAccountViewProps) {
  const { running } = deletion;
  return (
    <>
      <Section title="What is deleted">
        <Goes deletion={deletion} />
      </Section>
      <Section title="What stays for others">
        <ul className="max-w-3xl list-disc space-y-1.5 pl-5">
          <li>
            The numbers of reports you sent in other designers’ tests, under a code such as “tester 7” and without your
            name, because their results are calculated from them. A question of yours that was answered for all testers
            stays too, without your name.
          </li>
          <li>
            In patterns of others that you help with: revisions, corrections and decisions that you saved, without your
            name.
          </li>
          <li>Messages that people have already received.</li>
        </ul>
      </Section>
      <Section title="Delete for good">
        {running.length > 0 ? (
          <Notice title="Your account cannot be deleted yet">
            <p>{accountStays(running)}</p>
            <RunningLinks running={running} />
          </Notice>
        ) : (
          <>
            <p className="mb-4">This cannot be undone.</p>
            {children}
          </>
        )}
      </Section>
    </>
  );
}

function Goes({ deletion: { patterns, tests, applications, helps } }: { readonly deletion: AccountDeletion }) {
  return (
    <ul className="max-w-3xl list-disc space-y-1.5 pl-5 wrap-anywhere">
      <li>Your name, your e-mail address and your password.</li>
      {patterns.map((pattern) => (
        <li key={pattern.patternId}>
          Your pattern <bdi className="font-semibold">{pattern.name}</bdi>
          {goesWithPattern(pattern)}
        </li>
      ))}
      {tests === 0 ? null : (
        <li>
          Your name, measurements, photos and words in {counted(tests, "test", "tests")} of others. Where you are still
          at work, your spot goes to somebody else.
        </li>
      )}
      {applications === 0 ? null : <li>{counted(applications, "application", "applications")} to test.</li>}
      {helps === 0 ? null : <li>Your part in {counted(helps, "pattern", "patterns")} of others.</li>}
    </ul>
  );
}
