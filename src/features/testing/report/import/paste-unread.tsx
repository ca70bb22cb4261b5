"use client";

import type { TableFault } from "@/engine/tables";
import { Button } from "@/ui/button";
import { MessageList } from "@/ui/message-list";
import { placedInReports } from "./placed-in-reports";
import type { PasteReports } from "./paste-reports-state";

interface PasteUnreadProps {
  readonly state: PasteReports;
  readonly faults: readonly TableFault[];
}

/** What cannot be read, to be fixed at its cells or left out by one's own word. */
export function PasteUnread({ state, faults }: PasteUnreadProps) {
  const { view, choices, table, setChoices } = state;
  const placed = (fault: TableFault) => placedInReports(view, choices, fault);
  if (faults.length > 0) {
    const canLeave = faults.every(({ row }) => row !== null);
    return (
      <MessageList
        id="report-faults"
        tone="problem"
        title={faults.length === 1 ? "1 problem to fix" : `${faults.length} problems to fix`}
        items={faults.map(placed)}
      >
        {canLeave ? (
          <p className="mt-3">
            <Button look="quiet" onClick={() => setChoices({ leaveUnread: true })}>
              {faults.length === 1 ? "Import without this answer" : `Import without these ${faults.length} answers`}
            </Button>
          </p>
        ) : null}
      </MessageList>
    );
  }
  if (!table.ok || table.leftOut.length === 0) return null;
  const { leftOut } = table;
  return (
    <MessageList
      id="report-left-out"
      tone="plain"
      title={leftOut.length === 1 ? "1 answer is not imported" : `${leftOut.length} answers are not imported`}
      items={leftOut.map(placed)}
    >
      <p className="mt-3">
        <Button look="quiet" onClick={() => setChoices({ leaveUnread: false })}>
          Fix instead
        </Button>
      </p>
    </MessageList>
  );
}
