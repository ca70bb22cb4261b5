import Link from "next/link";

/** The name of the one list of archived calls: its title, and that of links to it. */
export const ARCHIVED = "Archived tests";

/** Leads to the archived calls, where there are any. */
export function ArchivedLink({ count }: { readonly count: number }) {
  if (count === 0) return null;
  return (
    <Link href="/calls/archived" className="text-link">
      {ARCHIVED}
    </Link>
  );
}
