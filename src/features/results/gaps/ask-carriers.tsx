import type { Carrier } from "@/engine/gaps";
import type { Asking } from "../asking";
import { carriersTold } from "../carrier-copy";

interface AskCarriersProps {
  readonly restsOn: readonly Carrier[];
  readonly asking: Asking;
  /** What a tester is asked about, if the finding rests on all that they measured. */
  readonly measurement?: string | undefined;
}

/** The way to ask each tester on whom a finding rests to measure again. */
export function AskCarriers({ restsOn, asking, measurement }: AskCarriersProps) {
  const asked = carriersTold(restsOn).flatMap((carrier) => {
    const of = carrier.measurement ?? measurement;
    const button = of === undefined ? null : asking({ tester: carrier.tester, measurement: of, what: "measure-again" });
    return button === null ? [] : [button];
  });
  return asked.length === 0 ? null : <div className="mt-2 flex flex-wrap items-center gap-3">{asked}</div>;
}
