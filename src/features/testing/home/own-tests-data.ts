import "server-only";
import { applicationLink } from "@/features/recruiting/applications/access";
import type { CallDates } from "@/features/recruiting/listing/data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { designerOfPattern, newestDocument, storedPattern } from "@/features/patterns/data";
import type { PatternDocument } from "@/engine/pattern";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { invitationLink } from "@/features/recruiting/invitations/access";
import { callTime, listingDays, testerTime } from "./call-time";

/** A test that a person takes part in, has applied for or is invited to. */
export interface OwnTest {
  readonly key: string;
  readonly href: string;
  readonly state: "testing" | "reported" | "stopped" | "invited" | "applied" | "withdrawn";
  readonly patternName: string;
  /** Its newest revision's; null where there is none. */
  readonly pattern: PatternDocument | null;
  readonly callTitle: string;
  readonly designerName: string;
  /** Null while no size is assigned. */
  readonly sizeLabel: string | null;
  readonly isClosed: boolean;
  readonly timeZone: string;
  readonly dates: CallDates<TesterDates> | null;
}

/** The viewer's tests, invitations and applications, the newest first. */
export async function ownTests({ accountId }: Viewer): Promise<OwnTest[]> {
  const [testers, applications] = await Promise.all([
    database().tester.findMany({
      where: {
        accountId,
        OR: [{ acceptedAt: { not: null } }, { invitedAt: { not: null }, invitationExpiresAt: { gt: new Date() } }],
      },
      orderBy: { invitedAt: "desc" },
      select: TEST,
    }),
    database().application.findMany({
      where: { accountId, tester: null },
      orderBy: { createdAt: "desc" },
      select: { id: true, withdrawnAt: true, call: CALL },
    }),
  ]);
  const tests = testers
    .filter(({ declinedAt, withdrawnAt }) => declinedAt === null && withdrawnAt === null)
    .map(toTest);
  const applied = applications.map(({ id, withdrawnAt, call }): OwnTest => {
    const state = withdrawnAt === null ? "applied" : "withdrawn";
    return {
      key: id,
      href: `/applications/${applicationLink(id)}`,
      state,
      sizeLabel: null,
      ...callWords(call),
      ...callTime(call.listing),
    };
  });
  return [...tests, ...applied];
}

const CALL = {
  select: {
    title: true,
    status: true,
    listing: listingDays,
    pattern: {
      select: {
        memberships: designerOfPattern,
        revisions: newestDocument,
      },
    },
  },
} as const;

const TEST = {
  ...{ id: true, size: true, linkVersion: true, timeZone: true, dates: true },
  ...{ acceptedAt: true, declinedAt: true, withdrawnAt: true, stoppedAt: true },
  reports: { take: 1, select: { id: true } },
  call: CALL,
} as const;

interface CallRow {
  readonly title: string;
  readonly status: "open" | "closed";
  readonly listing: { readonly document: unknown; readonly publishedAt: Date | null } | null;
  readonly pattern: {
    readonly memberships: readonly { readonly account: { readonly name: string } }[];
    readonly revisions: readonly { readonly id: string; readonly document: unknown }[];
  };
}

interface TestRow {
  readonly id: string;
  readonly size: string;
  readonly linkVersion: number;
  readonly timeZone: string | null;
  readonly dates: unknown;
  readonly acceptedAt: Date | null;
  readonly stoppedAt: Date | null;
  readonly reports: readonly unknown[];
  readonly call: CallRow;
}

function toTest(row: TestRow): OwnTest {
  const { id: testerId, call, linkVersion } = row;
  const [revision] = call.pattern.revisions;
  const size = revision && storedPattern(revision).sizes.find(({ id }) => id === row.size);
  const isIn = row.acceptedAt !== null;
  return {
    key: testerId,
    href: isIn ? `/testing/${testerId}` : `/invited/${invitationLink({ testerId, linkVersion })}`,
    state: isIn ? ownState(row) : "invited",
    sizeLabel: size?.label ?? row.size,
    ...callWords(call),
    ...testerTime(row, callTime(call.listing)),
  };
}

function ownState({ stoppedAt, reports }: TestRow): OwnTest["state"] {
  if (stoppedAt !== null) return "stopped";
  return reports.length > 0 ? "reported" : "testing";
}

function callWords({ title, status, pattern }: CallRow) {
  const [revision] = pattern.revisions;
  const document = revision === undefined ? null : storedPattern(revision);
  return {
    callTitle: title,
    isClosed: status === "closed",
    designerName: pattern.memberships[0]?.account.name ?? "",
    pattern: document,
    patternName: document?.name ?? "",
  };
}
