/**
 * The address that a request came from. Each proxy appends its client's address, so only the last `trustedProxies` entries were written by our own proxies; the client may have invented everything before them.
 *
 * @param socketAddress the address connected to this server.
 * @param forwardedFor the X-Forwarded-For header, as received.
 */
export function clientAddress(socketAddress: string, forwardedFor: string | undefined, trustedProxies: number): string {
  const plain = socketAddress.replace(/^::ffff:/, "");
  if (trustedProxies === 0 || forwardedFor === undefined) return plain;
  const hops = forwardedFor.split(",").map((hop) => hop.trim());
  return hops.at(-Math.min(trustedProxies, hops.length)) || plain;
}

/** What follows these in an address is a secret that gives access. */
const BEFORE_SECRET = /^\/(invitations|invited|applications|email-links|reminders)\//;

/** A request's path as it may be logged: without its query and without secrets. */
export function loggedPath(url: string | undefined): string {
  const path = url?.split("?", 1)[0] ?? "/";
  const [before] = BEFORE_SECRET.exec(path) ?? [];
  return before === undefined ? path : `${before}…`;
}
