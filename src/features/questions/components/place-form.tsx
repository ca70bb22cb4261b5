import { randomUUID } from "node:crypto";
import Link from "next/link";
import { ask, tell } from "../actions";
import type { PlaceQuery } from "../place-query";
import { SayForm } from "./say-form";

interface PlaceFormProps {
  readonly testerId: string;
  /** What is being said, and where. */
  readonly query: PlaceQuery;
  readonly closeHref: string;
}

/** The form that says something of a place. */
export function PlaceForm({ testerId, query: { place, say: saying }, closeHref }: PlaceFormProps) {
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
