import { acceptedProposalSchema, type AcceptedProposal } from "@/engine/revision";
import { readForm } from "@/server/read-form";
import { CHOSEN, LEAVE, readInputKey } from "./chosen-field";

/** What is chosen in a form, in the proposals' order. */
export function chosenIn(form: FormData): string[] {
  return [...readForm(form)].flatMap(([name, values]) => (name.startsWith(CHOSEN) ? values : []));
}

export type ReadChosen =
  { readonly ok: true; readonly take: readonly AcceptedProposal[] } | { readonly ok: false; readonly says: string };

/** The accepted proposals, from a form's values: `LEAVE`, or `input allowance.neck-band..`. */
export function readChosen(chosen: readonly string[]): ReadChosen {
  const taken = chosen.filter((value) => value !== LEAVE);
  if (taken.length === 0) return { ok: false, says: "Accept at least one proposal to see what would change." };
  const keys = taken.map((value) => value.split(" "));
  if (new Set(keys.map(([, key]) => key)).size < keys.length)
    return {
      ok: false,
      says: "You chose to change the same number in two proposals. Choose “Leave it as it is” or another option in one of them.",
    };
  const take = keys.map(([by, key = ""]) => acceptedProposalSchema.safeParse({ ...readInputKey(key), by }));
  if (!take.every((parsed) => parsed.success))
    return { ok: false, says: "One of these proposals cannot be read. Reload the page and choose again." };
  return { ok: true, take: take.map(({ data }) => data) };
}
