import { OneButtonForm } from "@/ui/one-button-form";
import { markRead } from "./news-actions";
import type { SentMark } from "./read-mark-schema";

interface GotItProps {
  readonly testerId: string;
  readonly mark: SentMark;
  /** What was read, for screen readers. */
  readonly about: string;
  readonly button?: string;
}

/** Takes what was read off the tester's home page. */
export function GotIt({ testerId, mark, about, button = "Got it" }: GotItProps) {
  return (
    <OneButtonForm
      action={markRead}
      sends={{ testerId, mark: JSON.stringify(mark) }}
      button={button}
      waiting="One moment …"
      about={about}
    />
  );
}
