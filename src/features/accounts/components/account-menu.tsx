import Link from "next/link";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { optionalViewer, type Viewer } from "@/server/viewer";

/** The signed-in person, in the header; empty while the database is unavailable, because the page itself says so. */
export async function AccountMenu() {
  const viewer = await viewerOrAway();
  if (viewer === "away") return null;
  return viewer === null ? (
    <Link href="/sign-in" className="py-2 font-semibold">
      Sign in
    </Link>
  ) : (
    <div className="flex min-w-0 items-center gap-4">
      <Link href="/testing" prefetch={false} className="shrink-0 py-2 text-soft hover:text-ink">
        Your tests
      </Link>
      <Link href="/account" className="min-w-0 truncate py-2 text-soft hover:text-ink">
        <span className="sr-only">Your account: </span>
        {viewer.name}
      </Link>
    </div>
  );
}

async function viewerOrAway(): Promise<Viewer | null | "away"> {
  try {
    return await optionalViewer();
  } catch (error) {
    if (isDatabaseUnavailable(error)) return "away";
    throw error;
  }
}
