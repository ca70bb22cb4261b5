import { randomUUID } from "node:crypto";
import Link from "next/link";
import type { InstructionBlock } from "@/engine/instructions";
import { ask, tell } from "../actions";
import { blockAnchor, placeKey } from "../place-key";
import type { PlaceQuery } from "../place-query";
import { SayForm } from "./say-form";

interface BlockFormsProps {
  readonly block: InstructionBlock;
  readonly testerId: string;
  /** What is being said at this place; null for nothing. */
  readonly saying: PlaceQuery["say"] | null;
}

/** The two ways to say something of a place, as links, and the form of the one that is chosen. */
export function BlockForms({ block, testerId, saying }: BlockFormsProps) {
  const here = `/testing/${testerId}/pattern`;
  const anchor = blockAnchor(block.place);
  if (saying !== null)
    return (
      <div className="mt-3 max-w-2xl rounded-md border border-l-4 border-line-strong border-l-thread bg-sheet p-4">
        <PlaceForm {...{ block, testerId, saying }} closeHref={`${here}#${anchor}`} />
      </div>
    );
  const about = <span className="sr-only">: {block.text.slice(0, 60)}</span>;
  const address = (say: PlaceQuery["say"]) => `${here}?place=${placeKey(block.place)}&say=${say}#${anchor}`;
  return (
    <p className="say">
      <Link href={address("question")} prefetch={false}>
        Ask about this place{about}
      </Link>
      <Link href={address("trouble")} prefetch={false}>
        Something went wrong here{about}
      </Link>
    </p>
  );
}

interface PlaceFormProps {
  readonly block: InstructionBlock;
  readonly testerId: string;
  readonly saying: PlaceQuery["say"];
  readonly closeHref: string;
}

function PlaceForm({ block, testerId, saying, closeHref }: PlaceFormProps) {
  const place = placeKey(block.place);
  const close = (
    <Link href={closeHref} prefetch={false} className="text-link inline-flex min-h-8 items-center">
      Close
    </Link>
  );
  const shared = {
    hidden: [
      ["testerId", testerId],
      ["place", place],
      ["formKey", randomUUID()],
    ] as const,
    keptAs: `${saying}-${testerId}-${place}`,
    waiting: "Sending …",
    isOpened: true,
    beside: close,
  };
  if (saying === "question")
    return (
      <SayForm
        {...shared}
        action={ask}
        fields={[
          {
            name: "asks",
            label: "Your question about this place",
            hint: "It is answered once, for all testers; they do not see who asked.",
          },
        ]}
        send="Send the question"
        done={<p>Your question is sent. The answer will stand here. {close}</p>}
      />
    );
  return (
    <SayForm
      {...shared}
      action={tell}
      fields={[
        { name: "happened", label: "What happened here", hint: "Only the designer and her helpers read it." },
        { name: "did", label: "What you did about it (optional)" },
      ]}
      send="Tell the designer"
      done={<p>The designer is told. {close}</p>}
    />
  );
}
