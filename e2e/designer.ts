import { randomUUID } from "node:crypto";
import type { BrowserContext } from "@playwright/test";
import { decode, encode } from "next-auth/jwt";
import { Pool } from "pg";
import { z } from "zod";
import { hashPassword } from "../src/features/accounts/password";
import type { Viewer } from "../src/server/viewer";

export interface Designer {
  readonly accountId: string;
  readonly name: string;
  readonly email: string;
}

let connections: Pool | undefined;

/** Rows of the tests' database. */
export async function query(statement: string, values: unknown[] = []): Promise<unknown[]> {
  connections ??= new Pool({ connectionString: process.env.DATABASE_URL, max: 2, allowExitOnIdle: true });
  return (await connections.query(statement, values)).rows;
}

let nobodysHash: Promise<string> | undefined;

/** Of a password that nobody knows. */
function unknownPassword(): Promise<string> {
  nobodysHash ??= hashPassword(randomUUID());
  return nobodysHash;
}

/** An invented person with an account of their own, written straight into the database. */
export async function makeDesigner({ password }: { password?: string } = {}): Promise<Designer> {
  const name = "Invented Designer";
  const email = `${randomUUID()}@example.org`;
  const rows = await query("INSERT INTO account (email, name, password_hash) VALUES ($1, $2, $3) RETURNING id", [
    email,
    name,
    await (password === undefined ? unknownPassword() : hashPassword(password)),
  ]);
  const [{ id }] = z.tuple([z.object({ id: z.string() })]).parse(rows);
  return { accountId: id, name, email };
}

const SESSION_COOKIE = "next-auth.session-token";

/** The cookie that the sign-in form would set. */
export async function sessionCookie({ accountId, name }: Designer): Promise<{ name: string; value: string }> {
  const secret = z.string().parse(process.env.NEXTAUTH_SECRET);
  const value = await encode({ token: { sub: accountId, name, sessionVersion: 1 }, secret });
  return { name: SESSION_COOKIE, value };
}

/** Signs a person in to a browser. */
export async function signInByCookie(context: BrowserContext, designer: Designer): Promise<void> {
  await context.addCookies([{ ...(await sessionCookie(designer)), url: z.string().parse(process.env.NEXTAUTH_URL) }]);
}

const sessionSchema = z.object({ sub: z.string() });
const viewersSchema = z.tuple([
  z.object({ accountId: z.string(), name: z.string(), email: z.string(), unit: z.enum(["cm", "in"]) }),
]);

/** Who is signed in to a browser. */
export async function signedIn(context: BrowserContext): Promise<Viewer> {
  const secret = z.string().parse(process.env.NEXTAUTH_SECRET);
  const token = (await context.cookies()).find(({ name }) => name === SESSION_COOKIE)?.value;
  const { sub } = sessionSchema.parse(await decode({ token, secret }));
  const rows = await query('SELECT id AS "accountId", name, email, unit FROM account WHERE id = $1', [sub]);
  return viewersSchema.parse(rows)[0];
}
