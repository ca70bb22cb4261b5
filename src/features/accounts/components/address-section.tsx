import { dayWords } from "@/ui/moment-copy";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import type { OwnAddress } from "../data";
import { askProofLink } from "../email-links/email-link-actions";
import { AddressForm } from "../email-links/address-form";

interface AddressSectionProps {
  readonly address: OwnAddress;
  readonly isMailOn: boolean;
  /** A link to confirm it was just mailed. */
  readonly isMailed: boolean;
}

/** The address of an account: whether it is confirmed, and another one instead. */
export function AddressSection({ address: { email, verifiedAt }, isMailOn, isMailed }: AddressSectionProps) {
  return (
    <div id="address" className="scroll-mt-4">
      <Section title="E-mail address" intro={<bdi>{email}</bdi>}>
        {isMailed && verifiedAt === null ? (
          <Notice tone="done" title="Check your mail">
            A link is on its way to your address. It works once, for one hour.
          </Notice>
        ) : null}
        <p className="mb-4">
          {verifiedAt === null
            ? "This address is not confirmed yet: nobody has shown that mail to it reaches you."
            : `Confirmed on ${dayWords(verifiedAt, "UTC")}.`}
        </p>
        {isMailOn && verifiedAt === null ? (
          <OneButtonForm action={askProofLink} sends={{}} button="Send a link to confirm it" waiting="Sending …" />
        ) : null}
        {isMailOn ? (
          <details className="mt-2">
            <summary className="inline-flex min-h-11 items-center py-2 text-thread underline underline-offset-4 hover:text-thread-dark">
              Change your address …
            </summary>
            <div className="mt-3 max-w-md">
              <AddressForm />
            </div>
          </details>
        ) : null}
      </Section>
    </div>
  );
}
