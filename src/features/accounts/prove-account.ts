import "server-only";
import { consumeAttempt, forgetTries, refundAttempt, type Limit } from "@/server/rate-limit";
import { accountByEmail, type SignInRow } from "./data";
import { isPassword } from "./password";

const QUARTER_HOUR = 15 * 60;
const BY_ACCOUNT: Limit = { name: "sign-in-account", tries: 8, withinSeconds: QUARTER_HOUR };
const BY_ADDRESS: Limit = { name: "sign-in-address", tries: 40, withinSeconds: QUARTER_HOUR };

export interface Credentials {
  readonly email: string;
  readonly password: string;
}

/**
 * The account of an e-mail and password; null where they do not match. A wrong password and a missing account take equally long and count the same.
 *
 * @param address where the request came from.
 * @throws {AppError} "too-many-tries".
 */
export async function proveAccount({ email, password }: Credentials, address: string): Promise<SignInRow | null> {
  await consumeAttempt(BY_ADDRESS, address);
  await consumeAttempt(BY_ACCOUNT, email);
  const account = await accountByEmail(email);
  if (!(await isPassword(account?.passwordHash, password))) return null;
  await refundAttempt(BY_ADDRESS, address);
  await forgetTries(BY_ACCOUNT, email);
  return account;
}
