import type { ReactNode } from "react";
import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import type { LoadedTester } from "../home/loaders";
import { mayMove } from "./may-move";
import { move } from "./news-actions";
import type { NewerRevision } from "./news-data";

interface RevisionNewsProps {
  readonly revision: NewerRevision;
  readonly loaded: LoadedTester;
  /** What it changes in the tester's size. */
  readonly differences: ReactNode;
}

/** A newer revision: what it changes in the tester's size, and the way to it for those who may still move. */
export function RevisionNews({ revision, loaded, differences }: RevisionNewsProps) {
  const { tester } = loaded;
  return (
    <>
      <p>
        <span className="font-semibold">Revision {revision.number} is out.</span> You work from revision{" "}
        {tester.revision.number}, and can finish with it.
      </p>
      <h3 className="mt-3 mb-1.5 text-base">
        What differs for size <bdi>{tester.size.label}</bdi>
      </h3>
      {differences}
      <div className="mt-2">
        <WayThere {...{ revision, loaded }} />
      </div>
    </>
  );
}

function WayThere({ revision, loaded }: Omit<RevisionNewsProps, "differences">) {
  const { tester, inHand } = loaded;
  const { number } = revision;
  if (inHand.ended !== null) return null;
  if (!revision.document.sizes.some(({ id }) => id === tester.size.id))
    return <p className="text-soft">It does not have your size, so stay with revision {tester.revision.number}.</p>;
  if (!mayMove(inHand))
    return (
      <p className="text-soft">
        You have sent a report about your garment, so your test stays with revision {tester.revision.number}.
      </p>
    );
  return (
    <AskedFirst question={`Move to revision ${number}`}>
      <p>
        The pattern, its numbers and your steps then show revision {number}. What you typed stays as you typed it.
        Counts and lengths that you left blank follow revision {number}: if you have already worked one of those above
        by revision {tester.revision.number}, enter it under “Your counts”. You can’t move back.
      </p>
      <OneButtonForm
        action={move}
        sends={{ testerId: tester.testerId, from: tester.revision.revisionId, to: revision.revisionId }}
        button={`Move to revision ${number}`}
        waiting="Moving …"
        look="main"
      />
    </AskedFirst>
  );
}
