import { answerMeasurements, parseMeasurementsInput } from "@/engine/tables";
import type { Verb } from "../verb";

export const readMeasurementsVerb: Verb = {
  name: "read-measurements",
  summary:
    "takes a pasted table of measurements; prints its sizes, lengths and counts, and the cells that cannot be read",
  run: (value) => {
    const parsed = parseMeasurementsInput(value);
    return parsed.ok ? { ok: true, output: answerMeasurements(parsed.document) } : parsed;
  },
};
