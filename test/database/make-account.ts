import { randomUUID } from "node:crypto";
import type { Account } from "@/generated/prisma/client";
import { hashPassword } from "@/features/accounts/password";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";

let nobodysHash: Promise<string> | undefined;

/** Of a password that nobody knows. */
function unknownPassword(): Promise<string> {
  nobodysHash ??= hashPassword(randomUUID());
  return nobodysHash;
}

/** An invented person with an account; without a password given, nobody knows it. */
export async function makeAccount(given: { name?: string; email?: string; password?: string } = {}): Promise<Account> {
  const { name = "Invented Person", email = `${randomUUID()}@example.org`, password } = given;
  const passwordHash = await (password === undefined ? unknownPassword() : hashPassword(password));
  return database().account.create({ data: { name, email, passwordHash } });
}

/** An invented person who is signed in. */
export async function makeViewer(name?: string): Promise<Viewer> {
  const account = await makeAccount({ name });
  return { accountId: account.id, name: account.name, email: account.email, unit: "cm" };
}
