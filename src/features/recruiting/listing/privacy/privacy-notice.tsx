import type { ReactNode } from "react";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { YOUNGEST_AGE, type NoticeFacts } from "../schema";

interface PrivacyNoticeProps {
  readonly designer: string;
  /** What the designer says in it; undefined while that is not complete. */
  readonly facts: NoticeFacts | undefined;
  /** Where this Sizewright is, such as `sizes.example`. */
  readonly site: string;
}

/** What is stored about applicants and testers, who sees it, and for how long. */
export function PrivacyNotice({ designer, facts, site }: PrivacyNoticeProps) {
  return (
    <>
      <Section title="Who is responsible">
        {facts === undefined ? (
          <Notice title="Not complete yet">
            <bdi>{designer}</bdi> has not said yet who is responsible and how long your data is stored. Ask them before
            you send anything that matters to you.
          </Notice>
        ) : (
          <p className="max-w-3xl wrap-anywhere">
            <bdi>{facts.responsible}</bdi> decides what is asked of you in this test and what it is used for. Write to
            them about your data: <bdi className="font-semibold">{facts.contact}</bdi>. Sizewright stores it, on the
            server of <bdi>{site}</bdi>.
          </p>
        )}
      </Section>
      <Section title="What is stored">
        <Points>
          <li>
            When you apply: your name, your e-mail address, the measurements you enter, which sizes you want, your yarn,
            needle or hook, your experience, what you write about yourself, your time zone, and to which agreement you
            agreed when.
          </li>
          <li>
            When you test: your report and its draft, your photos without place, time and camera, how you say it is
            going, your questions, your answers, and what the designer notes about your test.
          </li>
          <li>
            When you test again for the same designer, and only if you allow it: how much your measurements scattered in
            your earlier tests, and how your garments came out beside your swatches. You can take that back at any time.
          </li>
          <li>E-mail that Sizewright sends you, and the name under which you would like to be thanked.</li>
          <li>Who opened your page, your measurements or your photos, and on which day. You can see that, too.</li>
        </Points>
      </Section>
      <Section title="What it is for">
        <p className="max-w-3xl">
          To find you a size, to run the test with you, and to see which sizes came out as planned. Nothing is sold,
          there is no advertising and no tracking, and the only cookies are those that keep you signed in.
        </p>
      </Section>
      <Section title="Who sees it">
        <Points>
          <li>
            <bdi>{designer}</bdi> and the helpers they share this pattern with.
          </li>
          <li>Other testers: only a question of yours that was answered for all, without your name.</li>
          <li>Everybody: your name and your photos only if you allow it, and you can withdraw that at any time.</li>
          <li>Whoever runs the server can reach what is stored on it, in order to keep it running.</li>
        </Points>
      </Section>
      <Section title="How long it is stored">
        <Points>
          <li>
            {facts === undefined
              ? "The designer has not said yet for how long."
              : `Until ${monthWords(facts.monthsStored)} after the test is closed. Then your name, your addresses, your measurements, your photos, your application and your words are deleted automatically.`}
          </li>
          <li>
            The numbers of a report stay under a code such as “tester 7”, because the results of the test are calculated
            from them.
          </li>
          <li>You can delete your data earlier, at any time. Those numbers stay.</li>
          <li>The words of an e-mail: 14 days after it was sent. Who looked at what: one year.</li>
        </Points>
      </Section>
      <Section title="What you can do">
        <Points>
          <li>See, download and delete what is stored about you: on your own page, under “Your data”.</li>
          <li>Ask for a correction of what you cannot change yourself, and object to how it is used.</li>
          <li>Complain to the data protection authority where you live.</li>
        </Points>
        {facts === undefined || facts.more === "" ? null : (
          <p dir="auto" className="mt-4 max-w-3xl whitespace-pre-line wrap-anywhere">
            {facts.more}
          </p>
        )}
      </Section>
      <Section title="How old testers are">
        <p>Testers are {facts?.minimumAge ?? YOUNGEST_AGE} or over.</p>
      </Section>
    </>
  );
}

function Points({ children }: { readonly children: ReactNode }) {
  return <ul className="max-w-3xl list-disc space-y-1.5 pl-5 wrap-anywhere">{children}</ul>;
}

function monthWords(months: number): string {
  return months === 1 ? "1 month" : `${months} months`;
}
