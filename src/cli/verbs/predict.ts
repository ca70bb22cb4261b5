import { parsePredictInput, predict } from "@/engine/prediction";
import type { Verb } from "../verb";

export const predictVerb: Verb = {
  name: "predict",
  summary: "takes a pattern, a size and perhaps a tester; prints the expected measurements",
  run: (value) => {
    const parsed = parsePredictInput(value);
    return parsed.ok ? { ok: true, output: predict(parsed.document) } : parsed;
  },
};
