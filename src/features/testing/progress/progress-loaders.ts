import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { readMessages } from "@/features/mail/data";
import type { MessageStatus } from "@/features/mail/message-status";
import { wholeAddress } from "@/server/whole-address";
import { testedPattern } from "@/features/calls/tested-pattern-data";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { z } from "zod";
import { invitationLink } from "@/features/recruiting/invitations/access";
import type { Milestone } from "../home/data";
import { readReceivedReport, type ReceivedReport } from "./sent-report-data";
import { milestonesOf, progressRows, readCallTime } from "./progress-data";
import { mailToTester } from "./mail-data";
import { progressOf, type Progress } from "./tester-status-data";

export interface LoadedPerson {
  readonly progress: Progress;
  readonly milestones: readonly Milestone[];
  /** Null if nothing was sent. */
  readonly received: ReceivedReport | null;
  /** The tester's link; null if never invited, or if they deleted their data. */
  readonly link: string | null;
  /** Mail to them, the newest first. */
  readonly mail: readonly MessageStatus[];
}

/** One tester of a call. A tester of another call gives a 404. */
export async function loadPerson(
  access: CallAccess,
  { testerId, pattern, now }: { readonly testerId: string; readonly pattern: PatternDocument; readonly now: Date },
): Promise<LoadedPerson> {
  return await foundOr404(person(access, { testerId, pattern, now }));
}

async function person(
  access: CallAccess,
  { testerId, pattern, now }: { readonly testerId: string; readonly pattern: PatternDocument; readonly now: Date },
): Promise<LoadedPerson> {
  if (!z.uuid().safeParse(testerId).success) throw new AppError("not-found");
  const time = await readCallTime(access);
  const [[row], milestones, received, mail] = await Promise.all([
    progressRows(access, { testerIds: [testerId], time, now }),
    milestonesOf(access, testerId),
    readReceivedReport(access, testerId),
    readMessages(mailToTester(access, testerId)),
  ]);
  if (row === undefined) throw new AppError("not-found");
  const tested = await testedPattern(access, pattern);
  const progress = progressOf(row, { pattern: tested, timeZone: time.timeZone, now });
  const { invitedAt, name, linkVersion } = progress.row;
  const link = `/invited/${invitationLink({ testerId, linkVersion })}`;
  return {
    progress,
    milestones,
    ...{ received, mail },
    link: invitedAt === null || name === null ? null : wholeAddress(link),
  };
}
