import { parsePlacesRequest, placeApplicants } from "@/engine/places";
import type { Verb } from "../verb";

export const placesVerb: Verb = {
  name: "places",
  summary:
    "takes applicants; prints the best assignment of sizes, the waiting list, sizes below their minimum, and why",
  run: (value) => {
    const parsed = parsePlacesRequest(value);
    if (!parsed.ok) return parsed;
    const { applicants, ...options } = parsed.document;
    const answer = placeApplicants(applicants, options);
    if (answer.status === "faults") return { ok: false, faults: answer.faults };
    const { placed, waiting, short, objective } = answer;
    return {
      ok: true,
      output: {
        placed: placed.map(({ applicant, size, misfit, why }) => ({ applicant, size, misfit, why })),
        waiting: waiting.map(({ applicant, why }) => ({ applicant, why })),
        short: short.map(({ size, missing, nearest }) => ({
          size,
          missing,
          nearest: nearest.map(({ applicant, misfit, why }) => ({ applicant, misfit, why })),
        })),
        objective,
      },
    };
  },
};
