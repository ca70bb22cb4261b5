import "server-only";
import CredentialsProvider from "next-auth/providers/credentials";
import { clientAddress } from "@/server/client-address";
import { proveAccount } from "./prove-account";
import { signInSchema } from "./schema";

/** Sign-in with e-mail and password for next-auth. */
export function signInProvider() {
  return CredentialsProvider({
    name: "e-mail and password",
    credentials: { email: { label: "E-mail", type: "email" }, password: { label: "Password", type: "password" } },
    authorize: async (credentials) => {
      const parsed = signInSchema.safeParse(credentials);
      if (!parsed.success) return null;
      const account = await proveAccount(parsed.data, await clientAddress());
      if (account === null) return null;
      const { id, name, email, sessionVersion } = account;
      return { id, name, email, sessionVersion };
    },
  });
}
