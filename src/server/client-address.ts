import "server-only";
import { headers } from "next/headers";

/** The address of this request as seen by our own server, which overwrites the header, so clients cannot fake it. */
export async function clientAddress(): Promise<string> {
  return (await headers()).get("x-sizewright-address") ?? "unknown";
}
