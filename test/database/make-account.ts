import { randomUUID } from "node:crypto";
import type { Account } from "@/generated/prisma/client";
import { hashPassword } from "@/features/accounts/password";
import { database } from "@/server/database";

/** An invented person with an account; without a password given, nobody knows it. */
export async function makeAccount(given: { name?: string; email?: string; password?: string } = {}): Promise<Account> {
  const { name = "Invented Person", email = `${randomUUID()}@example.org`, password = randomUUID() } = given;
  const passwordHash = await hashPassword(password);
  return database().account.create({ data: { name, email, passwordHash } });
}
