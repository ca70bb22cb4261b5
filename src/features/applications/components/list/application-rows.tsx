"use client";

import { LinkArea } from "@/ui/link-area";
import { ApplicationItem, type ShownApplication } from "./application-item";

interface ApplicationRowsProps {
  readonly applications: readonly ShownApplication[];
  /** Where a word is said; null for who may only look. */
  readonly callId: string | null;
}

/** A row an application. Drawn in the browser too, for then its rows are sent once as words and not again as elements. */
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
