import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import type { BoardSize } from "../placing-board";
import { SendForm } from "./send-form";

interface SendPanelProps {
  readonly callId: string;
  readonly saw: string;
  readonly sizes: readonly BoardSize[];
  readonly endsOn: string;
  readonly timeZone: string;
  readonly isAsSolved: boolean;
  readonly mayAct: boolean;
}

/** Of more, only how many stand in each size; the table above names them. */
const MOST_NAMED = 60;

/** Whom sending would invite, to which size: what is listed here and nothing else. */
export function SendPanel({ callId, saw, sizes, endsOn, timeZone, isAsSolved, mayAct }: SendPanelProps) {
  const bySize = sizes
    .map(({ id, label, people }) => ({ id, label, people: people.filter(({ applicant }) => applicant !== null) }))
    .filter(({ people }) => people.length > 0);
  const count = bySize.reduce((sum, { people }) => sum + people.length, 0);
  if (count === 0 || !mayAct) return null;
  const over = sizes.filter((size) => size.over > 0).map(({ label }) => label);
  return (
    <Section
      title="Send"
      intro="Each of them gets a page of her own to say yes or no. Nothing is mailed from here: the messages with the links are then below, for you to copy."
    >
      <Sheet>
        <dl className="mb-6 grid gap-x-4 gap-y-2 sm:grid-cols-[auto_1fr]">
          {bySize.map(({ id, label, people }) => (
            <div key={id} className="contents">
              <dt className="font-semibold">{label}</dt>
              <dd className="wrap-anywhere max-sm:mb-2">
                {count > MOST_NAMED
                  ? `${people.length}`
                  : people.map(({ key, name }, at) => (
                      <span key={key}>
                        {at > 0 ? ", " : null}
                        <bdi>{name}</bdi>
                      </span>
                    ))}
              </dd>
            </div>
          ))}
        </dl>
        {isAsSolved ? null : (
          <p className="mb-4 text-soft">This is not what solving again would give. You can send it all the same.</p>
        )}
        {over.length > 0 ? (
          <Notice tone="problem" title={`More stand in ${over.join(", ")} than there are places`}>
            Nothing can be sent until somebody is moved, or more testers are wanted there.
          </Notice>
        ) : (
          <SendForm {...{ callId, saw, endsOn, timeZone, count }} />
        )}
      </Sheet>
    </Section>
  );
}
