import { Notice } from "@/ui/notice";

/** In the place of the instructions, where the revision has none. */
export function NoInstructions() {
  return (
    <Notice title="There are no written instructions here">
      <p>
        The designer has put only the numbers into this pattern. Work from the text that she has given you otherwise,
        with the numbers below.
      </p>
    </Notice>
  );
}
