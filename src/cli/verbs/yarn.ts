import { screenOutliers } from "@/engine/gaps";
import { parseCall } from "@/engine/pattern";
import { combinedCall } from "@/engine/revision";
import { yarnNeeds } from "@/engine/yarn";
import type { Verb } from "../verb";

export const yarnVerb: Verb = {
  name: "yarn",
  summary: "takes a call; prints how much of each yarn to buy in every size",
  run: (value) => {
    const parsed = parseCall(value);
    if (!parsed.ok) return parsed;
    return { ok: true, output: yarnNeeds(screenOutliers(combinedCall(parsed.document).call).call) };
  },
};
