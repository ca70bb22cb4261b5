import Link from "next/link";

interface MoreNotesProps {
  /** The page with all of them; null if this is that page. */
  readonly href: string | null;
  readonly many: number;
  readonly shown: number;
  /** Their plural name: "questions". */
  readonly of: string;
}

/** A link to everything about a passage, if not all of it is shown. */
export function MoreNotes({ href, many, shown, of }: MoreNotesProps) {
  if (href === null || many <= shown) return null;
  return (
    <Link href={href} prefetch={false} className="text-link mt-2 inline-flex min-h-11 items-center">
      All {many} {of} about this passage
    </Link>
  );
}
