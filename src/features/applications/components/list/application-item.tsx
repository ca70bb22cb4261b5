import { Word, type GivenWord } from "./given-word";

/** An application as the list shows it, in words, and no more: it is sent to the browser as it stands. */
export interface ShownApplication extends GivenWord {
  readonly href: string;
  /** The place that they have in the test; null for none. */
  readonly place: string | null;
  /** Null where it was withdrawn: then nothing is shown of it. */
  readonly lines: {
    readonly fit: string;
    readonly body: string;
    readonly wish: string;
    readonly work: string;
  } | null;
}

interface ApplicationItemProps {
  readonly application: ShownApplication;
  /** Where a word is said; null for who may only look. */
  readonly callId: string | null;
}

/** One application of the list: who, how the body fits, what she would make, and the designer's word. */
export function ApplicationItem({ application, callId }: ApplicationItemProps) {
  const { name, href, place, lines } = application;
  return (
    <li>
      <div>
        <h3>
          <a href={href}>
            <bdi>{name}</bdi>
          </a>
        </h3>
        {place === null ? null : (
          <p>
            <b>{place}</b>
          </p>
        )}
        {lines === null ? (
          <p className="text-soft">Withdrawn: the measurements are not shown any more.</p>
        ) : (
          <>
            <p>
              <b>{lines.fit}</b> {lines.body}
            </p>
            <p>{lines.wish}</p>
            <p className="work">{lines.work}</p>
          </>
        )}
      </div>
      {lines === null ? null : <Word given={application} callId={callId} />}
    </li>
  );
}
