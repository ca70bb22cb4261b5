import Link from "next/link";
import type { Viewer } from "@/server/viewer";
import { hasArchivedPatterns } from "./archived-data";

/** The name of the one list of archived patterns: its title, and that of links to it. */
export const ARCHIVED_PATTERNS = "Archived patterns";

/** Leads to the viewer's archived patterns, where they have any. */
export async function ArchivedPatternsLink({ viewer }: { readonly viewer: Viewer }) {
  if (!(await hasArchivedPatterns(viewer))) return null;
  return (
    <Link href="/patterns/archived" className="text-link">
      {ARCHIVED_PATTERNS}
    </Link>
  );
}
