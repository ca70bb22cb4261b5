import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";
import { reckonCall } from "@/features/analyses/mutations";
import { callAccess } from "@/features/calls/access";
import { patternAccess } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { storeCall } from "@/features/reports/document-mutations";
import { closeCall } from "@/features/testers/progress-mutations";
import { database, pool } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { readMigrations } from "@/server/migrations";
import { countTry } from "@/server/rate-limit";
import { seedDemo } from "../../../prisma/seed";
import { callDocument, reader } from "../../factories/call";
import { patternDocument } from "../../factories/pattern";
import { dumpRows } from "./dump-rows";
import { applies, choose, inventedCall, publish } from "./invented-applicants";
import { compute, inventedPattern, runOutOfTime } from "./invented-pattern";
import { inventedPerson } from "./invented-people";
import { inventedTesters } from "./invented-testers";
import { resultsOf } from "./results-of";

/*
 * Writes a dump of a database that this version of Sizewright has filled, with what its pages of results show, to be kept
 * and migrated by every later version: main-0008 was made by commit a2a4e3e. Everybody and everything in it is invented.
 *
 *   npx vitest run --project dump
 */

const FOLDER = "test/database/dumps";

const INSTRUCTIONS = "# Body\n\nCast on 98 (118).\n\nRow 1: work to the end.\n";

async function populate(): Promise<void> {
  await seedDemo();
  const [designer, other] = [await inventedPerson("Ines Duarte"), await inventedPerson("Tomas Lind")];
  const helpers = { editor: await inventedPerson("Kofi Mensah"), viewer: await inventedPerson("Yuki Tanaka") };
  await inventedPattern(designer, helpers);
  await testedCall(designer, await inventedPerson("Samir Haddad"));
  await closedCall(other);
  await stoppedCall(other);
  await countTry({ name: "invented", tries: 5, withinSeconds: 3_600 }, "somebody");
}

/** A call from its opening to its testers' reports, with applications to two versions of its agreement. */
async function testedCall(designer: Viewer, tester: Viewer): Promise<void> {
  const document = patternDocument({ instructions: INSTRUCTIONS });
  const { patternId } = await createPattern(designer, { document, reason: "First version, invented" });
  const callId = await inventedCall(await patternAccess(designer, patternId, "owner"));
  const access = await callAccess(designer, callId, "owner");
  await publish(access, { version: 1, agreement: "I will report." });
  const ids = [
    await applies(callId, "Account", { bust: 91, agreementVersion: 1, account: tester }),
    await applies(callId, "Early", { bust: 89, agreementVersion: 1 }),
  ];
  await publish(access, { version: 2, agreement: "I will report in time." });
  const busts = [88, 112, 90, 109, 92, 111, 90, 110, 91, 108, 93, 107];
  for (const [at, bust] of busts.entries())
    ids.push(await applies(callId, `Applicant ${at + 1}`, { bust, agreementVersion: 2 }));
  await choose(access, ids.toReversed());
  await inventedTesters(access, { designer, tester });
  await reckonCall(callId, compute);
}

async function closedCall(designer: Viewer): Promise<void> {
  const testers = [reader("ann", { bust: 50, length: 40 }), reader("bea", { bust: 101, length: 41.5 })];
  const { callId } = await storeCall(designer, { call: callDocument(testers), title: "Closed test (invented)" });
  await closeCall(await callAccess(designer, callId, "owner"));
  await reckonCall(callId, compute);
}

async function stoppedCall(designer: Viewer): Promise<void> {
  const call = callDocument([reader("zoe", { bust: 102 })]);
  const { callId } = await storeCall(designer, { call, title: "Too long to analyse (invented)" });
  await reckonCall(callId, runOutOfTime);
}

async function write(): Promise<void> {
  const newest = readMigrations("prisma/migrations").at(-1)?.name ?? "";
  const name = `main-${newest.slice(0, 4)}`;
  const calls = [];
  for (const { id: callId, title } of await database().call.findMany({ orderBy: { createdAt: "asc" } }))
    calls.push({ callId, title, results: await resultsOf(callId) });
  const { sql, counts } = await dumpRows(pool());
  expect(Object.keys(counts).filter((table) => counts[table] === 0)).toEqual([]);
  const gzipped = gzipSync(sql, { level: 9 });
  // Fails where there is such a dump already: one that is kept is never made anew.
  writeFileSync(join(FOLDER, `${name}.sql.gz`), gzipped, { flag: "wx" });
  const says = "Everybody and everything in this dump is invented.";
  writeFileSync(join(FOLDER, `${name}.json`), `${JSON.stringify({ says, newest, counts, calls }, null, 1)}\n`);
  console.log(`${name}: ${sql.length} bytes of SQL, ${gzipped.length} packed`, counts);
}

it("writes a dump", { timeout: 300_000 }, async () => {
  await populate();
  await write();
});
