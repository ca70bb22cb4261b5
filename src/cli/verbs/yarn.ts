import { screenOutliers } from "@/engine/gaps";
import { parseCall } from "@/engine/pattern";
import { combinedCall } from "@/engine/revision";
import { stitchFaults, yarnNeeds } from "@/engine/yarn";
import type { Verb } from "../verb";

export const yarnVerb: Verb = {
  name: "yarn",
  summary: "takes a call; prints how much of each yarn to buy in every size",
  run: (value) => {
    const parsed = parseCall(value);
    if (!parsed.ok) return parsed;
    const { call } = screenOutliers(combinedCall(parsed.document).call);
    return { ok: true, output: { ...yarnNeeds(call), faults: stitchFaults(call.pattern) } };
  },
};
