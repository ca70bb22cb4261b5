import { parsePredictInput, predict, predictStitches } from "@/engine/prediction";
import type { Verb } from "../verb";

export const predictVerb: Verb = {
  name: "predict",
  summary: "takes a pattern, a size and perhaps a tester; prints the expected measurements",
  run: (value) => {
    const parsed = parsePredictInput(value);
    if (!parsed.ok) return parsed;
    const { document } = parsed;
    return { ok: true, output: { ...predict(document), stitches: predictStitches(document) } };
  },
};
