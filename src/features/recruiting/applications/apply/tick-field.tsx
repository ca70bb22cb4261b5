import type { ReactNode } from "react";
import { FieldErrors } from "@/ui/field";
import { typedText } from "./apply-answer";
import { controlId, type Answered } from "./answered";

interface TickFieldProps {
  readonly field: string;
  readonly answered: Answered;
  readonly children: ReactNode;
}

/** A checkbox. */
export function TickField({ field, answered: { typed, faults }, children }: TickFieldProps) {
  const id = controlId(field);
  return (
    <div className="mb-3">
      <label className="flex min-h-11 cursor-pointer items-start gap-3 py-2">
        <input
          type="checkbox"
          id={id}
          name={field}
          value="yes"
          defaultChecked={typedText(typed, field) !== ""}
          aria-describedby={`${id}-error`}
          aria-invalid={faults[field] ? true : undefined}
          className="mt-0.5 size-5 shrink-0 accent-thread"
        />
        <span className="min-w-0 wrap-anywhere">{children}</span>
      </label>
      <FieldErrors id={id} errors={faults[field]} />
    </div>
  );
}
