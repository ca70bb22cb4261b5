import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { OpenCallPage } from "../loaders";

/** Why the reader cannot apply; nothing if they can. */
export function OpenCallState({ page: { listing, application } }: { readonly page: OpenCallPage }) {
  if (application !== null)
    return (
      <Notice tone="done" title="You have applied">
        <Link href={`/applications/${application}`} className="text-link">
          See your application
        </Link>{" "}
        to read, withdraw or delete it.
      </Notice>
    );
  switch (listing.taking) {
    case "open":
      return null;
    case "preview":
      return (
        <Notice title="Preview: this tester call is not published yet">
          <p>Only you and your helpers can see this page.</p>
        </Notice>
      );
    case "over":
      return (
        <Notice title="Applications have closed">
          <p>The last day to apply has passed. The page stays here for those who applied.</p>
        </Notice>
      );
    case "full":
      return (
        <Notice title="This test has enough applications">
          <p>It takes no more applications at the moment. If somebody withdraws, you can apply again.</p>
        </Notice>
      );
    case "closed":
      return (
        <Notice title="This test is closed">
          <p>The page stays here for those who took part.</p>
        </Notice>
      );
  }
}
