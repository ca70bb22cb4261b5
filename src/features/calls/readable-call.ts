import { callFaults, callFormatOf, type EarlierCall, type Fault, type Tester } from "@/engine/pattern";
import type { LeftOut } from "@/engine/results";

interface Reports {
  readonly testers: readonly Tester[];
  readonly leftOut: readonly LeftOut[];
}

/** The document of all testers that can be read together with the pattern, each of which has its shape already. */
export function readableCall(
  frame: Pick<EarlierCall, "pattern" | "places">,
  { testers, leftOut }: Reports,
): { document: EarlierCall; leftOut: readonly LeftOut[] } {
  const call: EarlierCall = { format: callFormatOf(testers), ...frame, testers };
  const faults = callFaults(call);
  if (faults.length === 0) return { document: call, leftOut };
  const faulty = faultsByTester(faults, testers);
  if (faulty.size === 0) throw new Error(`a stored call is damaged: ${faults.map(({ path }) => path).join(", ")}`);
  const unread = [...faulty].map(([tester, message]) => ({ tester, message }));
  return readableCall(frame, {
    testers: testers.filter(({ id }) => !faulty.has(id)),
    leftOut: [...leftOut, ...unread],
  });
}

/** The first fault of each tester that has one, by the tester's id. */
function faultsByTester(faults: readonly Fault[], testers: readonly { readonly id: string }[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const { path, says } of faults) {
    const [whole, index, inside] = /^testers\[(\d+)\]\.?(.*)$/.exec(path) ?? [];
    const id = whole === undefined ? undefined : testers[Number(index)]?.id;
    if (id !== undefined && !found.has(id)) found.set(id, `${inside}: ${says}`);
  }
  return found;
}
