import { encode } from "next-auth/jwt";
import { randomUUID } from "node:crypto";
import { editorGarment } from "@/cli/bench/editor-garment";
import { createAccount } from "@/features/accounts/mutations";
import { createPattern } from "@/features/patterns/mutations";
import { database } from "@/server/database";
import { environment } from "@/server/environment";

/* For `npm run bench -- editor`: an invented designer with one large pattern. Prints its path and the designer's cookie. */

const email = `designer-${randomUUID()}@example.org`;
await createAccount({ name: "Invented designer", email, password: randomUUID() });
const { id: accountId, name } = await database().account.findUniqueOrThrow({ where: { email } });
const viewer = { accountId, name, email, unit: "cm" } as const;
const { patternId } = await createPattern(viewer, { document: editorGarment(), reason: "For the bench" });
const session = await encode({
  token: { sub: accountId, name, sessionVersion: 1 },
  secret: environment().NEXTAUTH_SECRET,
});
console.log(`seeded: ${JSON.stringify({ path: `/patterns/${patternId}`, session })}`);
process.exit();
