import "server-only";
import { z } from "zod";
import { patternOfPieces } from "@/engine/pattern";
import { newestDocument, storedPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { answersAll } from "../report/has-reported-all";

/** What goes with an account, and what stands against deleting it. */
export interface AccountDeletion {
  /** Their own patterns. */
  readonly patterns: readonly OwnPattern[];
  /** Tests of others that they take part in or have taken part in. */
  readonly tests: number;
  readonly applications: number;
  /** Patterns of others that they help with. */
  readonly helps: number;
  /** Running tests of theirs whose testers are at work. */
  readonly running: readonly RunningTest[];
}

export interface OwnPattern {
  readonly patternId: string;
  readonly name: string;
  readonly tests: number;
  readonly testers: number;
  /** Helpers lose it too. */
  readonly helpers: number;
}

export interface RunningTest {
  readonly callId: string;
  readonly title: string;
  readonly unfinished: number;
}

export async function accountDeletion(accountId: string): Promise<AccountDeletion> {
  const [patterns, tests, applications, helps, running] = await Promise.all([
    patternsToDelete(ownedBy(accountId)),
    database().tester.count({ where: { accountId, acceptedAt: { not: null } } }),
    database().application.count({ where: { accountId } }),
    database().membership.count({ where: { accountId, role: { not: "owner" } } }),
    runningTests(database(), ownedBy(accountId)),
  ]);
  return { patterns, tests, applications, helps, running };
}

/** Where clause of the patterns that an account owns. */
export function ownedBy(accountId: string): Prisma.PatternWhereInput {
  return { memberships: { some: { accountId, role: "owner" } } };
}

/** What goes with some patterns, the oldest first. */
export async function patternsToDelete(where: Prisma.PatternWhereInput): Promise<OwnPattern[]> {
  const rows = await database().pattern.findMany({
    where,
    orderBy: { createdAt: "asc" },
    select: {
      id: true,
      revisions: newestDocument,
      calls: { select: { _count: { select: { testers: true } } } },
      _count: { select: { memberships: { where: { role: { not: "owner" } } } } },
    },
  });
  return rows.map(({ id, revisions: [revision], calls, _count }) => ({
    patternId: id,
    name: revision === undefined ? "" : storedPattern(revision).name,
    tests: calls.length,
    testers: calls.reduce((sum, call) => sum + call._count.testers, 0),
    helpers: _count.memberships,
  }));
}

/** Running tests of some patterns with testers who are at work and have not sent all of their report. */
export async function runningTests(connection: Connection, pattern: Prisma.PatternWhereInput): Promise<RunningTest[]> {
  const calls = await connection.call.findMany({
    where: { status: "open", pattern, testers: { some: AT_WORK } },
    orderBy: { createdAt: "asc" },
    select: {
      ...{ id: true, title: true, pieces: true },
      pattern: { select: { revisions: newestDocument } },
      testers: { where: AT_WORK, select: { answeredMeasurements: true } },
    },
  });
  return calls.flatMap(({ id: callId, title, pieces, pattern, testers }) => {
    const [revision] = pattern.revisions;
    const document = revision === undefined ? null : patternOfPieces(storedPattern(revision), pieces);
    const unfinished = testers.filter(
      ({ answeredMeasurements }) =>
        document === null || !answersAll(answeredSchema.parse(answeredMeasurements ?? []), document),
    );
    return unfinished.length === 0 ? [] : [{ callId, title, unfinished: unfinished.length }];
  });
}

const answeredSchema = z.array(z.string());
const AT_WORK = { acceptedAt: { not: null }, stoppedAt: null } satisfies Prisma.TesterWhereInput;
