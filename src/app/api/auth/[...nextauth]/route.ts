import NextAuth from "next-auth";
import type { NextRequest } from "next/server";
import { signInProvider } from "@/features/accounts/sign-in-provider";
import { sessionOptions } from "@/server/session-options";

interface Context {
  readonly params: Promise<{ nextauth: string[] }>;
}

// Made a request, for the settings are read when the first one comes and not when the site is built.
async function answer(request: NextRequest, context: Context): Promise<Response> {
  return NextAuth(request, context, { ...sessionOptions(), providers: [signInProvider()] });
}

export { answer as GET, answer as POST };
