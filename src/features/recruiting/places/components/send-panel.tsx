import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import type { LoadedBoard } from "../loaders";
import type { PlacesFrame } from "./places-frame";
import { SendForm } from "./send-form";

interface SendPanelProps {
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
  readonly endsOn: string;
  readonly timeZone: string;
  readonly isAsSolved: boolean;
  /** Sizewright sends each message itself. */
  readonly isMailed: boolean;
}

/** Who would be invited to which size: exactly those listed here. */
export function SendPanel({ loaded, frame, endsOn, timeZone, isAsSolved, isMailed }: SendPanelProps) {
  const { board, shown, people } = loaded;
  const { sizes } = board;
  const bySize = sizes.filter(({ placed }) => placed > 0);
  const count = bySize.reduce((sum, { placed }) => sum + placed, 0);
  if (count === 0 || !frame.mayAct) return null;
  const over = sizes.filter((size) => size.over > 0).map(({ label }) => label);
  return (
    <Section
      title="Send invitations"
      intro={`Each person gets their own page to say yes or no. ${isMailed ? "Sizewright sends them the link by e-mail." : "Sizewright sends no email: you copy the messages with the links below and send them yourself."}`}
    >
      <Sheet>
        <dl className="mb-6 grid gap-x-4 gap-y-2 sm:grid-cols-[auto_1fr]">
          {bySize.map(({ id, label, from, invited, placed }) => (
            <div key={id} className="contents">
              <dt className="font-semibold">{label}</dt>
              <dd className="wrap-anywhere max-sm:mb-2">
                {!shown.areNamed
                  ? `${placed}`
                  : people.among(from + invited, placed).map(({ key, name }, index) => (
                      <span key={key}>
                        {index > 0 ? ", " : null}
                        <bdi>{name}</bdi>
                      </span>
                    ))}
              </dd>
            </div>
          ))}
        </dl>
        {isAsSolved ? null : (
          <p className="mb-4 text-soft">
            Assigning sizes again would give a different result. You can still send these invitations.
          </p>
        )}
        {over.length > 0 ? (
          <Notice tone="problem" title={`Too many people in ${over.join(", ")}`}>
            Move someone, or set a higher “at most” under Set up, before you send invitations.
          </Notice>
        ) : (
          <SendForm callId={frame.callId} saw={board.placing} {...{ endsOn, timeZone, count }} />
        )}
      </Sheet>
    </Section>
  );
}
