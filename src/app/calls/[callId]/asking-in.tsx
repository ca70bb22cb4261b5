import type { LoadedCall } from "@/features/calls/loaders";
import type { Asking } from "@/features/results/asking";
import { askableTesters, askedMeasurements } from "@/features/testing/asked/asked-data";
import { AskToMeasureButton } from "@/features/testing/asked/ask-to-measure";

interface Named {
  /** By ids in the analysis: names, and ids of the call's own testers. */
  readonly names: ReadonlyMap<string, string>;
  readonly ids: ReadonlyMap<string, string>;
}

/** How testers of a call are asked from its results: a button each, for those who may edit an open call. */
export async function askingIn(
  { access, call, mayEdit, revision }: LoadedCall,
  { names, ids }: Named,
): Promise<Asking> {
  if (!mayEdit || call.status !== "open" || ids.size === 0) return () => null;
  const [askable, waiting] = await Promise.all([askableTesters(access, [...ids.values()]), askedMeasurements(access)]);
  return function askTester({ tester, measurement: id, what }) {
    const testerId = ids.get(tester);
    const measurement = revision.document.measurements.find((each) => each.id === id);
    if (testerId === undefined || measurement === undefined || !askable.has(testerId)) return null;
    const asked = waiting.find((question) => question.testerId === testerId && question.measurement === id);
    return (
      <AskToMeasureButton
        key={`${testerId} ${id}`}
        {...{ testerId, measurement, what }}
        callId={call.callId}
        name={names.get(tester) ?? tester}
        askedAt={asked?.askedAt ?? null}
      />
    );
  };
}
