import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { OpenCallPage } from "../loaders";

/** Whatever stands between the reader and applying; nothing where nothing does. */
export function OpenCallState({ page: { told, application } }: { readonly page: OpenCallPage }) {
  if (application !== null)
    return (
      <Notice tone="done" title="You have applied">
        <Link href={`/applications/${application}`} className="text-link">
          See what you sent
        </Link>
        , change it or withdraw it.
      </Notice>
    );
  switch (told.taking) {
    case "open":
      return null;
    case "preview":
      return (
        <Notice title="A preview: this call is not open yet">
          <p>Only you and your helpers see this page. Others are told that there is nothing here.</p>
        </Notice>
      );
    case "over":
      return (
        <Notice title="Applying is over">
          <p>The last day to apply has passed. What was asked for stays here for those who applied.</p>
        </Notice>
      );
    case "full":
      return (
        <Notice title="No more applications are taken">
          <p>
            As many people have applied as this call can take. A place may come free again where somebody withdraws.
          </p>
        </Notice>
      );
    case "closed":
      return (
        <Notice title="This call is closed">
          <p>The test is over. What was asked for stays here for those who took part.</p>
        </Notice>
      );
  }
}
