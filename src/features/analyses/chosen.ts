import { acceptedProposalSchema, type AcceptedProposal } from "@/engine/revision";
import { readForm } from "@/server/read-form";
import { CHOSEN, LEAVE } from "./chosen-field";
import { readInputKey } from "./input-key";

/** What stands chosen in a form, in the proposals' order. */
export function chosenIn(form: FormData): string[] {
  return [...readForm(form)].flatMap(([name, values]) => (name.startsWith(CHOSEN) ? values : []));
}

export type ReadChosen =
  { readonly ok: true; readonly take: readonly AcceptedProposal[] } | { readonly ok: false; readonly says: string };

/** What is taken, by a form's values: `LEAVE`, or `input allowance.neck-band..`. */
export function readChosen(chosen: readonly string[]): ReadChosen {
  const taken = chosen.filter((value) => value !== LEAVE);
  if (taken.length === 0)
    return { ok: false, says: "Every proposal is left. Take at least one to see what would change." };
  const keys = taken.map((value) => value.split(" "));
  if (new Set(keys.map(([, key]) => key)).size < keys.length)
    return {
      ok: false,
      says: "The same number is taken under two proposals. Leave it under one of them, or choose another of those that stand there.",
    };
  const take = keys.map(([by, key = ""]) => acceptedProposalSchema.safeParse({ ...readInputKey(key), by }));
  if (!take.every((parsed) => parsed.success))
    return { ok: false, says: "One of these proposals cannot be read. Reload the page and choose again." };
  return { ok: true, take: take.map(({ data }) => data) };
}
