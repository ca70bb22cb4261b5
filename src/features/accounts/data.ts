import "server-only";
import { database } from "@/server/database";

export interface SignInRow {
  readonly id: string;
  readonly email: string;
  readonly name: string;
  readonly passwordHash: string;
  readonly sessionVersion: number;
}

export function accountByEmail(email: string): Promise<SignInRow | null> {
  return database().account.findUnique({
    where: { email },
    select: { id: true, email: true, name: true, passwordHash: true, sessionVersion: true },
  });
}
