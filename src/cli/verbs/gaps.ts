import { gaps } from "@/engine/gaps";
import { parseCall } from "@/engine/pattern";
import { combinedCall } from "@/engine/revision";
import type { Verb } from "../verb";

export const gapsVerb: Verb = {
  name: "gaps",
  summary: "takes a call; prints which sizes came out different from the pattern",
  run: (value) => {
    const parsed = parseCall(value);
    if (!parsed.ok) return parsed;
    const { call, leftOut } = combinedCall(parsed.document);
    return { ok: true, output: { ...gaps(call), ...(leftOut.length === 0 ? {} : { leftOut }) } };
  },
};
