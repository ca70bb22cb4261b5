import { gaps } from "@/engine/gaps";
import { parseCall } from "@/engine/pattern";
import type { Verb } from "../verb";

export const gapsVerb: Verb = {
  name: "gaps",
  summary: "takes a call; prints which sizes came out different from the pattern",
  run: (value) => {
    const parsed = parseCall(value);
    return parsed.ok ? { ok: true, output: gaps(parsed.document) } : parsed;
  },
};
