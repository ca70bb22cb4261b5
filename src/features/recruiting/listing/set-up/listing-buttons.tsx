import { Button } from "@/ui/button";
import type { ListingAnswer } from "./listing-actions";
import type { FieldFault } from "../read-typed";
import { FaultLinks } from "./answer-notice";

interface ListingButtonsProps {
  readonly isPublished: boolean;
  readonly open: readonly FieldFault[];
  readonly answer: ListingAnswer | undefined;
  readonly pending: boolean;
}

/** The buttons of a listing. The Enter key presses the first one. */
export function ListingButtons({ isPublished, open, answer, pending }: ListingButtonsProps) {
  const isConflict = answer?.status === "conflict";
  return (
    <div className="border-t border-line-strong pt-6">
      {isPublished || open.length === 0 ? null : (
        <div className="mb-5 max-w-3xl text-sm">
          <p className="font-semibold">To fix before you can publish</p>
          <FaultLinks faults={open} />
        </div>
      )}
      <div className="flex flex-wrap items-center gap-3">
        {isPublished ? (
          <>
            <Intent name="publish" pending={pending}>
              {isConflict ? "Replace their version with mine" : "Save changes"}
            </Intent>
            <Intent name="unpublish" look="plain" pending={pending}>
              Unpublish
            </Intent>
          </>
        ) : (
          <>
            <Intent name="save" look="quiet" pending={pending}>
              {isConflict ? "Replace their version with mine" : "Save draft"}
            </Intent>
            <Intent name="publish" pending={pending}>
              Publish
            </Intent>
          </>
        )}
        <p role="status" className="text-sm text-soft">
          {pending ? "Saving …" : answer?.status === "saved" ? "Saved." : ""}
        </p>
      </div>
      <p className="mt-4 max-w-3xl text-sm text-soft">
        {isPublished
          ? "Changes are public as soon as you save them. You can unpublish the listing while nobody has applied."
          : "A draft is saved as you typed it, even if something is missing."}
      </p>
    </div>
  );
}

function Intent({
  name,
  pending,
  look,
  children,
}: {
  readonly name: "save" | "publish" | "unpublish";
  readonly pending: boolean;
  readonly look?: "quiet" | "plain";
  readonly children: string;
}) {
  return (
    <Button type="submit" name="intent" value={name} look={look} disabled={pending}>
      {children}
    </Button>
  );
}
