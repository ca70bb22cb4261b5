import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { callDates } from "@/features/recruiting/listing/data";
import type { ListingDocument } from "@/features/recruiting/listing/schema";
import { invitationLink } from "@/features/recruiting/invitations/access";
import { isMailOn } from "@/features/mail/mail-status";
import { messageStatusWords, type MessageStatus } from "@/features/mail/message-status";
import { wholeAddress } from "@/server/whole-address";
import { isTimeZone } from "@/server/time-zone";
import type { PageOfList } from "@/ui/page-number";
import { messageText } from "./message-text";
import type { InvitedPage, InvitedTester } from "./placing-data";
import type { TesterState } from "./tester-state";

export interface InvitationView {
  readonly testerId: string;
  readonly name: string;
  readonly sizeLabel: string;
  readonly state: TesterState;
  /** Only for viewers who may invite; null once the person has answered or the time is over. */
  readonly message: string | null;
  readonly link: string;
  /** Whether the offer was sent by mail, when, or why not; null where it was not to be. */
  readonly mail: string | null;
}

export interface InvitationPage extends PageOfList {
  /** Sizewright sends each message itself. */
  readonly isMailed: boolean;
  readonly invitations: readonly InvitationView[];
}

interface Asked {
  /** Who signs the messages. */
  readonly from: string;
  readonly pattern: PatternDocument;
  readonly listing: ListingDocument | null;
  readonly timeZone: string;
  /** The offers that were sent by mail, the newest first. */
  readonly offers: readonly MessageStatus[];
}

/** Who was invited, each with their personal link and a message to copy. */
export function invitationViews({ invited, ...page }: InvitedPage, asked: Asked): InvitationPage {
  const labels = new Map(asked.pattern.sizes.map(({ id, label }) => [id, label]));
  const invitations = invited.map((tester) => {
    const { testerId, name, state } = tester;
    const sizeLabel = labels.get(tester.size) ?? tester.size;
    const link = wholeAddress(`/invited/${invitationLink(tester)}`);
    const message = state === "invited" ? inviteText({ tester, sizeLabel, link }, asked) : null;
    const offer = asked.offers.find((sent) => sent.testerId === testerId);
    const mail = offer === undefined ? null : messageStatusWords(offer, asked.timeZone);
    return { testerId, name, sizeLabel, state, link, message, mail };
  });
  return { ...page, invitations, isMailed: isMailOn() };
}

interface Invited {
  readonly tester: InvitedTester;
  readonly sizeLabel: string;
  readonly link: string;
}

function inviteText({ tester, sizeLabel, link }: Invited, { from, pattern, listing, timeZone }: Asked): string {
  const days = tester.dates ?? listing?.dates ?? null;
  const dates = days === null ? null : callDates(days, timeZone);
  return messageText({
    ...{ name: tester.name, pattern: pattern.name, size: sizeLabel, link, from },
    dates:
      dates === null ? null : { startsAt: dates.startOn.at, swatchBy: dates.swatchBy.at, reportBy: dates.reportBy.at },
    expiresAt: tester.expiresAt ?? new Date(),
    timeZone: tester.timeZone !== null && isTimeZone(tester.timeZone) ? tester.timeZone : timeZone,
  });
}
