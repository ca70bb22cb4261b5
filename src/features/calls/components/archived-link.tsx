import Link from "next/link";

/** The name of the one list of archived calls: its title, and that of links to it. */
export const ARCHIVED = "Archived tests";

interface ArchivedLinkProps {
  readonly patterns: readonly { readonly archivedCalls: number }[];
}

/** Leads to the archived calls, where these patterns have any. */
export function ArchivedLink({ patterns }: ArchivedLinkProps) {
  if (patterns.every(({ archivedCalls }) => archivedCalls === 0)) return null;
  return (
    <Link href="/calls/archived" className="text-link">
      {ARCHIVED}
    </Link>
  );
}
