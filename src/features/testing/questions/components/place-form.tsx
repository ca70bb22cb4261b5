import { randomUUID } from "node:crypto";
import Link from "next/link";
import { ask, tell } from "../actions";
import type { PlaceQuery } from "../place-query";
import { SayForm } from "./say-form";

interface PlaceFormProps {
  readonly testerId: string;
  /** What the form is for, and where. */
  readonly query: PlaceQuery;
  readonly closeHref: string;
}

/** The form for a question or a trouble spot. */
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
    storageKey: `${saying}-${testerId}-${place}`,
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
            label: "Your question",
            hint: "The answer is shown to all testers, without your name.",
          },
        ]}
        send="Send question"
        done={<p>Your question is sent. The answer will appear here. {close}</p>}
      />
    );
  return (
    <SayForm
      {...shared}
      action={tell}
      fields={[
        { name: "happened", label: "What happened here", hint: "Only the designer and their helpers read it." },
        { name: "did", label: "What you did about it (optional)" },
      ]}
      send="Send to the designer"
      done={<p>Sent to the designer. {close}</p>}
    />
  );
}
