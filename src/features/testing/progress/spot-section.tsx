import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { giveSpotBack, openSpots } from "./spot-actions";
import { isAtWork, type Progress } from "./tester-status-data";

/** Opens the spot of a tester who gave no sign, and gives it back as long as it is open. */
export function SpotSection({ callId, progress }: { readonly callId: string; readonly progress: Progress }) {
  const { row, state } = progress;
  const sends = { callId, testerId: row.testerId };
  if (row.freedAt !== null)
    return (
      <Section title="Their spot">
        <p className="mb-3">
          {row.hasOpenSpot
            ? "You opened their spot, and nobody has taken it yet. They can continue on their own, or you can give it back."
            : "You opened their spot, and somebody else has it now."}
        </p>
        {row.hasOpenSpot ? (
          <OneButtonForm action={giveSpotBack} sends={sends} button="Give the spot back" waiting="Giving it back …" />
        ) : null}
      </Section>
    );
  if (!isAtWork(state)) return null;
  return (
    <Section title="Their spot">
      <AskedFirst question="Open their spot for somebody else">
        <p>
          For a tester you have not heard from for a long time. What they sent stays and counts. If they come back, they
          read why, and they can continue as long as nobody else has the spot. Until then you can also give it back.
        </p>
        <OneButtonForm action={openSpots} sends={sends} button="Open the spot" waiting="Opening it …" look="main" />
      </AskedFirst>
    </Section>
  );
}
