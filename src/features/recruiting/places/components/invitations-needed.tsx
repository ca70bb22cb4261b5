import { invitationsWithin } from "@/engine/places";
import { Sheet } from "@/ui/sheet";
import { chanceToFinish, invitationsNeeded, type Loss } from "../places-loss";
import type { StoredSize } from "../stored-board";

/** How many people to invite so that enough finish, by size; never more than a size may have. */
export function InvitationsNeeded({ sizes, loss }: { readonly sizes: readonly StoredSize[]; readonly loss: Loss }) {
  const advice = adviceOf(sizes, loss);
  if (advice.length === 0) return null;
  return (
    <Sheet>
      <h2 className="mb-2 text-xl">How many people to invite</h2>
      <ul className="mb-2 grid gap-1">
        {advice.map((each) => (
          <Needed key={`${each.least} ${each.invite}`} advice={each} loss={loss} />
        ))}
      </ul>
      <p className="text-sm text-soft">{lossWords(loss)}</p>
    </Sheet>
  );
}

interface Advice {
  readonly least: number;
  readonly invite: number;
  /** False where the most testers of the sizes are too few for the usual certainty. */
  readonly isEnough: boolean;
  readonly sizes: readonly StoredSize[];
}

/** Sizes with the same advice together, those that need fewest first. */
function adviceOf(sizes: readonly StoredSize[], loss: Loss): readonly Advice[] {
  const groups = new Map<string, Advice>();
  for (const size of sizes.filter(({ least }) => least > 0)) {
    const { least, most } = size;
    const { invite, isEnough } = invitationsWithin(invitationsNeeded(least, loss), most);
    const key = `${least} ${invite}`;
    groups.set(key, { least, invite, isEnough, sizes: [...(groups.get(key)?.sizes ?? []), size] });
  }
  return [...groups.values()].toSorted((one, other) => one.least - other.least || other.invite - one.invite);
}

function Needed({ advice, loss }: { readonly advice: Advice; readonly loss: Loss }) {
  const { least, invite, isEnough, sizes } = advice;
  const names = sizes.map(({ label }) => label).join(", ");
  if (!isEnough)
    return (
      <li>
        Invite <strong>{invite}</strong> per size, the most you set: {names}. Then <strong>{least}</strong>{" "}
        {least === 1 ? "finishes" : "finish"} with{" "}
        {percent(chanceToFinish({ invited: invite, finishers: least }, loss))} certainty.
      </li>
    );
  const few = sizes.filter(({ wanted }) => wanted < invite);
  return (
    <li>
      To have <strong>{least}</strong> finish with 80 % certainty, invite <strong>{invite}</strong> per size: {names}.
      {few.length > 0
        ? ` You have fewer spots in ${few.map(({ label, wanted }) => `${label} (${wanted})`).join(", ")}.`
        : null}
    </li>
  );
}

function lossWords({ share, record }: Loss): string {
  if (record === null)
    return `This assumes that ${percent(share)} of testers drop out. Once at least 10 people were invited to your closed tests, your own drop-out rate is used.`;
  return `This assumes that ${percent(share)} of testers drop out, as in your closed tests: ${record.reported} of ${record.invited} people invited sent a report.`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
