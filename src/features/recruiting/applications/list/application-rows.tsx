"use client";

import { LinkArea } from "@/ui/link-area";
import { ApplicationItem, type ShownApplication } from "./application-item";

interface ApplicationRowsProps {
  readonly applications: readonly ShownApplication[];
  /** The call for the decision buttons; null for viewers. */
  readonly callId: string | null;
}

/** One row per application. A client component, so that its rows are sent once, as text, and not again as elements. */
export function ApplicationRows({ applications, callId }: ApplicationRowsProps) {
  return (
    <LinkArea>
      <ul className="application-list">
        {applications.map((application) => (
          <ApplicationItem key={application.applicationId} application={application} callId={callId} />
        ))}
      </ul>
    </LinkArea>
  );
}
