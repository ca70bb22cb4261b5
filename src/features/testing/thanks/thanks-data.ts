import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import { listingDays } from "../home/call-time";
import { writtenIn } from "../home/data";
import type { CreditOrder } from "./thanks-schema";

/** A tester who has sent a report, and what they got for it. */
export interface ThankedTester {
  readonly testerId: string;
  readonly name: string;
  /** Id of the size. */
  readonly size: string;
  /** "" where they would not be named, null until they have said. */
  readonly creditName: string | null;
  /** Imported, or deleted their data: there is nobody to ask. */
  readonly isNameless: boolean;
  readonly patternSentAt: Date | null;
  readonly namedAt: Date | null;
  readonly payment: string;
}

export interface Thanks extends PageOfList {
  readonly testers: readonly ThankedTester[];
  /** Of all who have sent a report. */
  readonly counts: {
    readonly all: number;
    readonly patternSent: number;
    readonly named: number;
    readonly unsaid: number;
  };
  /** What the listing promises testers; "" if nothing was written. */
  readonly promised: string;
}

/** What the listing promises testers; "" if nothing was written. */
export async function readPromised(access: CallAccess): Promise<string> {
  return writtenIn(await database().listing.findFirst({ where: { call: callScope(access) }, ...listingDays })).promised;
}

/** A page of the testers who have sent a report, in the order in which they were taken on. */
export async function readThanks(access: CallAccess, page: number): Promise<Thanks> {
  const reported = { call: callScope(access), reportedAt: { not: null } };
  const [all, patternSent, named, unsaid, promised] = await Promise.all([
    database().tester.count({ where: reported }),
    database().tester.count({ where: { ...reported, reward: { patternSentAt: { not: null } } } }),
    database().tester.count({ where: { ...reported, reward: { namedAt: { not: null } } } }),
    database().tester.count({ where: { ...reported, contact: { creditName: null } } }),
    readPromised(access),
  ]);
  const list = pageOfList(page, all);
  const rows = await database().tester.findMany({
    where: reported,
    orderBy: { position: "asc" },
    skip: list.skip,
    take: list.take,
    select: { id: true, code: true, size: true, contact: { select: { name: true, creditName: true } }, reward: true },
  });
  return {
    ...list,
    testers: rows.map(({ id, code, size, contact, reward }) => ({
      ...{ testerId: id, size, name: contact?.name ?? code, creditName: contact?.creditName ?? null },
      isNameless: contact === null,
      patternSentAt: reward?.patternSentAt ?? null,
      namedAt: reward?.namedAt ?? null,
      payment: reward?.payment ?? "",
    })),
    counts: { all, patternSent, named, unsaid },
    promised,
  };
}

interface Credited {
  readonly order: CreditOrder;
  readonly sizes: PatternDocument["sizes"];
}

/** The names of all who have sent a report and said how they would like to be named, in the order wanted. */
export async function creditNames(access: CallAccess, { order, sizes }: Credited): Promise<string[]> {
  const rows = await database().testerContact.findMany({
    where: { creditName: { notIn: [""] }, tester: { call: callScope(access), reportedAt: { not: null } } },
    orderBy: { tester: { reportedAt: "asc" } },
    select: { creditName: true, tester: { select: { size: true } } },
  });
  const named = rows.flatMap(({ creditName, tester: { size } }) => (creditName === null ? [] : { creditName, size }));
  if (order === "report") return named.map(({ creditName }) => creditName);
  const alphabet = new Intl.Collator("en");
  const indexOf = (id: string) => sizes.findIndex((size) => size.id === id);
  return named
    .toSorted(
      (one, other) =>
        (order === "size" ? indexOf(one.size) - indexOf(other.size) : 0) ||
        alphabet.compare(one.creditName, other.creditName),
    )
    .map(({ creditName }) => creditName);
}
