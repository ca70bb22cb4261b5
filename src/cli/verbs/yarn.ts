import { screenOutliers } from "@/engine/gaps";
import { parseCall } from "@/engine/pattern";
import { yarnNeeds } from "@/engine/yarn";
import type { Verb } from "../verb";

export const yarnVerb: Verb = {
  name: "yarn",
  summary: "takes a call; prints how much of each yarn to buy in every size",
  run: (value) => {
    const call = parseCall(value);
    return call.ok ? { ok: true, output: yarnNeeds(screenOutliers(call.document).call) } : call;
  },
};
