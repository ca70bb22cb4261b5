import { Button } from "@/ui/button";
import type { OpeningAnswer } from "../actions";
import type { FieldFault } from "../read-typed";
import { FaultLinks } from "./answer-notice";

interface OpeningButtonsProps {
  readonly isPublished: boolean;
  readonly open: readonly FieldFault[];
  readonly answer: OpeningAnswer | undefined;
  readonly pending: boolean;
}

/** What can be done with an opening. The first button is the one that the Enter key presses. */
export function OpeningButtons({ isPublished, open, answer, pending }: OpeningButtonsProps) {
  const isLate = answer?.status === "late";
  return (
    <div className="border-t border-line-strong pt-6">
      {isPublished || open.length === 0 ? null : (
        <div className="mb-5 max-w-3xl text-sm">
          <p className="font-semibold">Before you can publish</p>
          <FaultLinks faults={open} />
        </div>
      )}
      <div className="flex flex-wrap items-center gap-3">
        {isPublished ? (
          <>
            <Intent name="publish" pending={pending}>
              {isLate ? "Save mine over theirs" : "Save the changes"}
            </Intent>
            <Intent name="take back" look="plain" pending={pending}>
              Take back
            </Intent>
          </>
        ) : (
          <>
            <Intent name="keep" look="quiet" pending={pending}>
              {isLate ? "Keep mine over theirs" : "Keep as a draft"}
            </Intent>
            <Intent name="publish" pending={pending}>
              Publish
            </Intent>
          </>
        )}
        <p role="status" className="text-sm text-soft">
          {pending ? "Saving …" : answer?.status === "kept" ? "Kept." : ""}
        </p>
      </div>
      <p className="mt-4 max-w-3xl text-sm text-soft">
        {isPublished
          ? "Changes are public as soon as you save them. You can take the call back for as long as nobody has applied."
          : "A draft is kept as you typed it, also where something is missing."}
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
  readonly name: "keep" | "publish" | "take back";
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
