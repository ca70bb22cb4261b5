import Link from "next/link";

interface MoreSaidProps {
  /** Where all of them stand; null where this is there. */
  readonly href: string | null;
  readonly many: number;
  readonly shown: number;
  /** What they are called: "questions". */
  readonly of: string;
}

/** The way to all that is said of a place, where more is said than is shown; else nothing. */
export function MoreSaid({ href, many, shown, of }: MoreSaidProps) {
  if (href === null || many <= shown) return null;
  return (
    <Link href={href} prefetch={false} className="text-link mt-2 inline-flex min-h-11 items-center">
      All {many} {of} at this place
    </Link>
  );
}
