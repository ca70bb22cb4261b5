import { randomUUID } from "node:crypto";
import { benchCall } from "@/cli/bench/bench-call";
import { createAccount } from "@/features/accounts/mutations";
import { createCall } from "@/features/calls/mutations";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { storeCall } from "@/features/testing/report/document-mutations";
import { database } from "@/server/database";

/*
 * For `npm run bench -- worker`: an invented call with as many testers as the argument says, and calls that nobody has
 * reported on. Prints their ids.
 */

const TESTERS = Number(process.argv[2] ?? 300);
const EMPTY_CALLS = 200;

const email = `designer-${randomUUID()}@example.org`;
await createAccount({ name: "Invented designer", email, password: randomUUID() });
const { id: accountId, name } = await database().account.findUniqueOrThrow({ where: { email } });
const viewer = { accountId, name, email, unit: "cm" } as const;
const call = benchCall(TESTERS);
const { callId } = await storeCall(viewer, { call, title: `Bench of ${TESTERS} testers` });
const created = await createPattern(viewer, { document: call.pattern, reason: "For the bench" });
const pattern = await provePattern(database(), { viewer, patternId: created.patternId, least: "owner" });
const emptyIds: string[] = [];
for (let made = 1; made <= EMPTY_CALLS; made += 1) {
  const empty = await createCall(pattern, { title: `Empty call ${made}`, places: {} }, database());
  emptyIds.push(empty.callId);
}
console.log(`seeded: ${JSON.stringify({ callId, emptyIds })}`);
process.exit();
