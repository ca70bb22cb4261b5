import { randomUUID } from "node:crypto";
import type { BrowserContext } from "@playwright/test";
import { encode } from "next-auth/jwt";
import { Client } from "pg";
import { z } from "zod";
import { hashPassword } from "../src/features/accounts/password";

export interface Designer {
  readonly accountId: string;
  readonly name: string;
  readonly email: string;
}

/** Rows of the tests' database. */
export async function query(statement: string, values: unknown[] = []): Promise<unknown[]> {
  const client = new Client({ connectionString: process.env.DATABASE_URL });
  await client.connect();
  try {
    return (await client.query(statement, values)).rows;
  } finally {
    await client.end();
  }
}

let nobodysHash: Promise<string> | undefined;

/** Of a password that nobody knows. */
function unknownPassword(): Promise<string> {
  nobodysHash ??= hashPassword(randomUUID());
  return nobodysHash;
}

/** An invented person with an account of her own, written straight into the database. */
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

/** Signs a person in to a browser by the cookie that the sign-in form would set. */
export async function signInByCookie(context: BrowserContext, { accountId, name }: Designer): Promise<void> {
  const secret = z.string().parse(process.env.NEXTAUTH_SECRET);
  const value = await encode({ token: { sub: accountId, name, sessionVersion: 1 }, secret });
  await context.addCookies([
    { name: "next-auth.session-token", value, url: z.string().parse(process.env.NEXTAUTH_URL) },
  ]);
}
