"use client";

import { AskedAtField } from "../autosave/asked-at-field";

interface TickControlProps {
  readonly field: string;
  readonly label: string;
  readonly isTicked: boolean;
}

/** How a checkbox is drawn. A client component, as `ReportControl` is. */
export function TickControl({ field, label, isTicked }: TickControlProps) {
  return (
    <div className="min-w-0">
      <label className="flex min-h-11 items-center gap-3">
        {/* Browsers do not send unchecked boxes. */}
        <input type="hidden" name={field} value="" />
        <input
          type="checkbox"
          name={field}
          value="yes"
          defaultChecked={isTicked}
          className="size-5 shrink-0 accent-thread"
        />
        <span className="min-w-0 wrap-anywhere">{label}</span>
      </label>
      <AskedAtField field={field} />
    </div>
  );
}
