import "server-only";
import { environment } from "./environment";

/** A page's whole address, to be copied or sent. */
export function wholeAddress(path: string): string {
  return new URL(path, environment().NEXTAUTH_URL).href;
}
