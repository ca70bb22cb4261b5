import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { tellOthers } from "../no-spot-actions";

interface NoSpotSectionProps {
  readonly callId: string;
  /** Applicants who have no spot and were not told. */
  readonly untold: number;
}

/** Tells those who have no spot by mail, after a confirmation. */
export function NoSpotSection({ callId, untold }: NoSpotSectionProps) {
  if (untold === 0) return null;
  const people = untold === 1 ? "1 person has no spot and was" : `${untold} people have no spot and were`;
  return (
    <Section title="Without a spot" intro={`${people} not told yet.`}>
      <AskedFirst question="Tell them by e-mail">
        <p>
          Those whom you declined read that you could not give them a spot; all others that every spot is given for now,
          and that you will write if one opens up. Each is told once.
        </p>
        <OneButtonForm
          action={tellOthers}
          sends={{ callId }}
          button={untold === 1 ? "Tell 1 person" : `Tell ${untold} people`}
          waiting="Telling them …"
        />
      </AskedFirst>
    </Section>
  );
}
