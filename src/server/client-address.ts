import "server-only";
import { headers } from "next/headers";

/** Where this request came from, as our own server saw it; the header is overwritten there, so nobody can send it. */
export async function clientAddress(): Promise<string> {
  return (await headers()).get("x-sizewright-address") ?? "unknown";
}
