import "server-only";
import { callDates } from "@/features/openings/data";
import { invitationLink } from "@/features/testers/access";
import { environment } from "@/server/environment";
import { isTimeZone } from "@/server/time-zone";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import type { PlacedTester, PlacingRows } from "./data";
import { messageText } from "./message-text";
import { testerState, type TesterState } from "./tester-state";

export interface InvitationView {
  readonly testerId: string;
  readonly name: string;
  readonly sizeLabel: string;
  readonly state: TesterState;
  /** To whoever may invite; null once she has answered, or cannot any more. */
  readonly message: string | null;
  readonly link: string;
}

export interface InvitationPage extends PageOfList {
  readonly invitations: readonly InvitationView[];
}

const LISTED = 12;

interface Asked {
  readonly now: Date;
  /** Who signs the messages. */
  readonly from: string;
  readonly timeZone: string;
  readonly page: number;
}

/** Who was invited, those first whose answer is awaited, each with their personal link and the message to copy. */
export function invitationViews(rows: PlacingRows, { now, from, timeZone, page }: Asked): InvitationPage {
  const labels = new Map(rows.pattern.sizes.map(({ id, label }) => [id, label]));
  const invited = rows.testers
    .filter(({ invitedAt }) => invitedAt !== null)
    .map((tester) => ({ tester, state: testerState(tester, now) }))
    .toSorted((one, other) => Number(one.state !== "invited") - Number(other.state !== "invited"));
  const shown = pageOfList(page, invited.length, LISTED);
  const invitations = invited.slice(shown.skip, shown.skip + shown.take).map(({ tester, state }) => {
    const sizeLabel = labels.get(tester.size) ?? tester.size;
    const link = new URL(`/invited/${invitationLink(tester)}`, environment().NEXTAUTH_URL).href;
    const message = state === "invited" ? inviteText({ tester, rows, sizeLabel, link, from, timeZone }) : null;
    return { testerId: tester.testerId, name: tester.name, sizeLabel, state, link, message };
  });
  return { ...shown, invitations };
}

interface Invited {
  readonly tester: PlacedTester;
  readonly rows: PlacingRows;
  readonly sizeLabel: string;
  readonly link: string;
  readonly from: string;
  readonly timeZone: string;
}

function inviteText({ tester, rows: { pattern, opening }, sizeLabel, link, from, timeZone }: Invited): string {
  const days = tester.dates ?? opening?.dates ?? null;
  const dates = days === null ? null : callDates(days, timeZone);
  return messageText({
    ...{ name: tester.name, pattern: pattern.name, size: sizeLabel, link, from },
    dates:
      dates === null ? null : { startsAt: dates.startOn.at, swatchBy: dates.swatchBy.at, reportBy: dates.reportBy.at },
    endsAt: tester.invitationEndsAt ?? new Date(),
    timeZone: tester.timeZone !== null && isTimeZone(tester.timeZone) ? tester.timeZone : timeZone,
  });
}
