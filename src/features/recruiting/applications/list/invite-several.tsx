"use client";

import Link from "next/link";
import { AskedFirst } from "@/ui/asked-first";
import { Button } from "@/ui/button";
import { TextInput } from "@/ui/field";
import { Notice } from "@/ui/notice";
import type { OfferAnswer } from "../../places/actions";
import { NO_SIZE_YET } from "../../places/offer-copy";

interface InviteSeveralProps {
  /** The default last day to reply. */
  readonly endsOn: string;
  readonly timeZone: string;
  /** Sizewright sends each message itself. */
  readonly isMailed: boolean;
  readonly invite: (form: FormData) => void;
  readonly isSending: boolean;
}

/** Invites all who are ticked to the size that they have; the second step says who gets an invitation. */
export function InviteSeveral({ endsOn, timeZone, isMailed, invite, isSending }: InviteSeveralProps) {
  return (
    <AskedFirst question="Invite selected">
      <p>
        Everyone selected who has a size and no invitation yet gets their own page to say yes or no.{" "}
        {isMailed
          ? "Sizewright sends them the link by e-mail."
          : "Sizewright sends no email: you copy each message afterwards."}
      </p>
      <div>
        <label htmlFor="several-ends-on" className="mb-1 block font-semibold">
          They can reply until the end of
        </label>
        <TextInput
          id="several-ends-on"
          name="endsOn"
          type="date"
          defaultValue={endsOn}
          aria-describedby="several-ends-on-hint"
          className="max-w-56"
        />
        <p id="several-ends-on-hint" className="mt-1 text-sm text-soft">
          Time zone: {timeZone}
        </p>
      </div>
      <div>
        <Button type="submit" formAction={invite} disabled={isSending}>
          {isSending ? "Inviting …" : "Send invitations"}
        </Button>
      </div>
    </AskedFirst>
  );
}

type OffersProps = Pick<OfferAnswer, "invited" | "refused"> & Pick<InviteSeveralProps, "isMailed"> & { callId: string };

/** What became of everyone who was selected. */
export function Offers({ callId, isMailed, invited, refused }: OffersProps) {
  return (
    <>
      {invited.length === 0 ? null : (
        <Notice
          tone="done"
          title={invited.length === 1 ? "1 person is invited" : `${invited.length} people are invited`}
        >
          <p className="wrap-anywhere">
            {invited.join(", ")}.{" "}
            <Link
              href={`/calls/${callId}/sizes?sent=${invited.length}#invitations`}
              prefetch={false}
              className="text-link"
            >
              {isMailed ? "See their e-mails" : "Copy and send each message"}
            </Link>
          </p>
        </Notice>
      )}
      {refused.length === 0 ? null : (
        <Notice
          tone="problem"
          title={refused.length === 1 ? "1 person is not invited" : `${refused.length} people are not invited`}
        >
          <ul className="wrap-anywhere">
            {refused.map(({ name, why }, index) => (
              <li key={index}>
                <bdi className="font-semibold">{name}</bdi>: {why}
              </li>
            ))}
          </ul>
          {refused.some(({ why }) => why === NO_SIZE_YET) ? (
            <Link
              href={`/calls/${callId}/sizes`}
              prefetch={false}
              className="text-link inline-flex min-h-9 items-center"
            >
              Assign sizes
            </Link>
          ) : null}
        </Notice>
      )}
    </>
  );
}
