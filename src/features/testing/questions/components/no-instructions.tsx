import { Notice } from "@/ui/notice";

/** Shown instead of the instructions if the revision has none. */
export function NoInstructions() {
  return (
    <Notice title="There are no written instructions here">
      <p>
        This pattern contains only the numbers. Work from the text the designer has given you, with the numbers below.
      </p>
    </Notice>
  );
}
