/** What follows these in an address is a secret that lets whoever has it in. */
const BEFORE_SECRET = /^\/(invitations|invited|applications)\//;

/** A request's path as logs may keep it: without its query, and without a secret that it carries. */
export function loggedPath(url: string | undefined): string {
  const path = url?.split("?", 1)[0] ?? "/";
  const [before] = BEFORE_SECRET.exec(path) ?? [];
  return before === undefined ? path : `${before}…`;
}
