import { randomUUID } from "node:crypto";
import type { Account } from "@/generated/prisma/client";
import { hashPassword } from "@/features/accounts/password";
import { database } from "@/server/database";

/** An invented person with an account. Without a password nobody can sign in to it by the form. */
export async function makeAccount(given: { name?: string; email?: string; password?: string } = {}): Promise<Account> {
  const { name = "Invented Person", email = `${randomUUID()}@example.org`, password } = given;
  const passwordHash = password === undefined ? "none" : await hashPassword(password);
  return database().account.create({ data: { name, email, passwordHash } });
}
