import { redirect } from "next/navigation";
import { stopByLink } from "@/features/testing/reminders/stop-mutations";

interface Context {
  readonly params: Promise<{ readonly link: string }>;
}

/** A mail reader unsubscribes its reader, without a sign-in. @see RFC 8058 */
export async function POST(_request: Request, { params }: Context): Promise<Response> {
  const { link } = await params;
  return (await stopByLink(link)) ? new Response("You are unsubscribed.\n") : new Response(null, { status: 404 });
}

/** Whoever opens it in a browser chooses there; programs that scan mail open every link, and change nothing. */
export async function GET(_request: Request, { params }: Context): Promise<never> {
  redirect(`/reminders/${(await params).link}`);
}
