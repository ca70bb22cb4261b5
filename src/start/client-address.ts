/**
 * The address that a request came from. Each proxy appends whom it spoke with, so of the list only the last
 * `trustedProxies` entries were written by proxies of ours; whatever stands before them, the client may have made up.
 *
 * @param socketAddress who is connected to this server.
 * @param forwardedFor the X-Forwarded-For header, as received.
 */
export function clientAddress(socketAddress: string, forwardedFor: string | undefined, trustedProxies: number): string {
  const plain = socketAddress.replace(/^::ffff:/, "");
  if (trustedProxies === 0 || forwardedFor === undefined) return plain;
  const hops = forwardedFor.split(",").map((hop) => hop.trim());
  return hops.at(-Math.min(trustedProxies, hops.length)) || plain;
}
