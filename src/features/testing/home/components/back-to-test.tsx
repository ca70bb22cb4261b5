import Link from "next/link";
import type { LoadedTester } from "../loaders";

/** Link from a page of a test back to the tester's home page. */
export function BackToTest({ tester: { testerId, revision, size } }: Pick<LoadedTester, "tester">) {
  return (
    <Link href={`/testing/${testerId}`} prefetch={false} className="text-link inline-flex min-h-8 items-center">
      <span className="wrap-anywhere">
        ← Your test of <bdi>{revision.document.name}</bdi>, size <bdi>{size.label}</bdi>
      </span>
    </Link>
  );
}
