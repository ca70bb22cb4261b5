import { useEffect, useState, type FocusEvent } from "react";
import type { LengthUnit } from "@/engine/units";
import type { Answered } from "./answered";
import { bodyField, type AskedMeasurement } from "./apply-answer";
import { readBodyLength } from "./read-body-length";

/** So long a question must have been in sight to count as read. */
const READ_MS = 1_500;
const LEAVE_IT = "If your number is correct, leave it as it is.";

interface Checked {
  readonly faults: readonly string[];
  readonly doubts: readonly string[];
}

const SILENT: Checked = { faults: [], doubts: [] };

interface Left {
  readonly written: string;
  readonly unit: LengthUnit;
  /** The answer to the form at that time. */
  readonly faults: Answered["faults"];
}

/**
 * Checks a body measurement when the person leaves its field. What it says replaces what the last answer to the form said.
 *
 * @param unit chosen since the page opened. @returns `isQuestioned`: the person has read the question, so the form is not stopped for it again.
 */
export function useBodyCheck(measurement: AskedMeasurement, answered: Answered, unit: LengthUnit | undefined) {
  const { faults, doubts } = answered;
  const field = bodyField(measurement.id);
  const [left, setLeft] = useState<Left>();
  const [questioned, setQuestioned] = useState<string>();
  // A newer answer of the server counts over an older check.
  const live = left?.faults === faults ? checkedLength(left.written, unit ?? left.unit, measurement) : undefined;
  const question = live?.doubts[0];
  useEffect(() => {
    if (question === undefined) return undefined;
    const timer = setTimeout(() => setQuestioned(question), READ_MS);
    return () => clearTimeout(timer);
  }, [question]);
  const check = ({ currentTarget: { value, form } }: FocusEvent<HTMLInputElement>) => {
    const chosen = form === null ? null : new FormData(form).get("unit");
    setLeft({ written: value.trim(), unit: chosen === "in" ? "in" : "cm", faults });
  };
  const isQuestioned = question !== undefined && questioned === question;
  return { isQuestioned, check, ...(live ?? { faults: faults[field] ?? [], doubts: doubts[field] ?? [] }) };
}

function checkedLength(written: string, unit: LengthUnit, measurement: AskedMeasurement): Checked {
  if (written === "") return SILENT;
  const length = readBodyLength(written, unit, measurement);
  if (!length.ok) return { faults: [length.fault], doubts: [] };
  return length.doubt === null ? SILENT : { faults: [], doubts: [`${length.doubt} ${LEAVE_IT}`] };
}
