import { Notice } from "@/ui/notice";

/** In the place of an analysis that is not there yet. */
export function StillReckoning() {
  return (
    <Notice title="The call is still being reckoned.">
      Reports or the pattern have changed. Load this page again in a moment.
    </Notice>
  );
}
