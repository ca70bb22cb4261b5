import { SelectBox } from "@/ui/select-shown";
import { SEVERAL_APPLICATIONS } from "./decide-several";
import { Decision, type GivenDecision } from "./decision";

/** An application as the list shows it, in words: only what the browser needs. */
export interface ShownApplication extends GivenDecision {
  readonly href: string;
  /** Their spot in the test; null for none. */
  readonly place: string | null;
  /** The size that they are assigned and not invited to; null for none. */
  readonly assigned: string | null;
  /** Null if withdrawn: then no details are shown. */
  readonly lines: {
    readonly fit: string;
    readonly body: string;
    readonly wishes: string;
    readonly work: string;
  } | null;
}

interface ApplicationItemProps {
  readonly application: ShownApplication;
  /** The call for the decision buttons; null for viewers. */
  readonly callId: string | null;
}

/** One application of the list: the name, how the body fits, the sizes they would make, and the decision. */
export function ApplicationItem({ application, callId }: ApplicationItemProps) {
  const { name, href, place, assigned, lines } = application;
  return (
    <li>
      <div>
        <h3>
          {callId === null || lines === null || place !== null ? null : (
            <SelectBox
              form={SEVERAL_APPLICATIONS}
              name="applicationId"
              value={application.applicationId}
              about={name}
            />
          )}
          <a href={href}>
            <bdi>{name}</bdi>
          </a>
        </h3>
        {place === null ? null : (
          <p>
            <b>{place}</b>
          </p>
        )}
        {assigned === null ? null : <p className="text-soft">{assigned}</p>}
        {lines === null ? (
          <p className="text-soft">Withdrawn. The measurements are no longer shown.</p>
        ) : (
          <>
            <p>
              <b>{lines.fit}</b> {lines.body}
            </p>
            <p>{lines.wishes}</p>
            <p className="work">{lines.work}</p>
          </>
        )}
      </div>
      {lines === null ? null : <Decision given={application} callId={callId} />}
    </li>
  );
}
