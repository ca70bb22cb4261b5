import type { Carrier } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";

interface Told {
  readonly pattern: PatternDocument;
  /** By ids of testers. */
  readonly names: ReadonlyMap<string, string>;
}

const MOST_TOLD = 3;

/** How many are asked beside a finding: whoever was told of. */
export function carriersTold(restsOn: readonly Carrier[]): readonly Carrier[] {
  return restsOn.slice(0, MOST_TOLD);
}

/** On whom a finding stands or falls, in a sentence; null where it rests on several who agree. */
export function carrierSentence(restsOn: readonly Carrier[], told: Told): string | null {
  const [only, ...others] = restsOn;
  if (only === undefined) return null;
  if (others.length === 0) return `It rests on ${carrierWords(only, told)} alone.`;
  const shown = carriersTold(restsOn).map((carrier) => carrierWords(carrier, told));
  const left = restsOn.length - shown.length;
  const list = [...shown, ...(left === 0 ? [] : [`the measurements of ${left} more`])].join(", or without ");
  return `It would not stand without ${list}.`;
}

function carrierWords({ tester, measurement }: Carrier, { pattern, names }: Told): string {
  const name = names.get(tester) ?? tester;
  return `${name}’s ${measurementName(pattern, measurement) ?? "measurements"}`;
}

/** `E Upper arm`; null where the pattern has no such measurement. */
export function measurementName(
  { measurements }: PatternDocument,
  measurement: string | null | undefined,
): string | null {
  const { letter = "", label } = measurements.find(({ id }) => id === measurement) ?? {};
  if (label === undefined) return null;
  return letter === "" ? label : `${letter} ${label}`;
}
