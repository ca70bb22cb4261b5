import { Sheet } from "@/ui/sheet";
import { invitationsNeeded, type Loss } from "../places-loss";
import type { StoredSize } from "../stored-board";

/** How many people to invite so that enough finish, by size. */
export function InvitationsNeeded({ sizes, loss }: { readonly sizes: readonly StoredSize[]; readonly loss: Loss }) {
  const asked = sizes.filter(({ least }) => least > 0);
  const leasts = [...new Set(asked.map(({ least }) => least))].toSorted((one, other) => one - other);
  if (leasts.length === 0) return null;
  return (
    <Sheet>
      <h2 className="mb-2 text-xl">How many people to invite</h2>
      <ul className="mb-2 grid gap-1">
        {leasts.map((least) => (
          <Needed key={least} {...{ least, loss }} sizes={asked.filter((size) => size.least === least)} />
        ))}
      </ul>
      <p className="text-sm text-soft">{lossWords(loss)}</p>
    </Sheet>
  );
}

interface NeededProps {
  readonly least: number;
  readonly sizes: readonly StoredSize[];
  readonly loss: Loss;
}

function Needed({ least, sizes, loss }: NeededProps) {
  const invited = invitationsNeeded(least, loss);
  if (invited === null) return null;
  const few = sizes.filter(({ wanted }) => wanted < invited);
  return (
    <li>
      To have <strong>{least}</strong> finish with 80 % certainty, invite <strong>{invited}</strong> per size:{" "}
      {sizes.map(({ label }) => label).join(", ")}.
      {few.length > 0
        ? ` You have fewer spots in ${few.map(({ label, wanted }) => `${label} (${wanted})`).join(", ")}.`
        : null}
    </li>
  );
}

function lossWords({ share, record }: Loss): string {
  const percent = `${Math.round(100 * share)} %`;
  if (record === null)
    return `This assumes that ${percent} of testers drop out. Once at least 10 people were invited to your closed tests, your own drop-out rate is used.`;
  return `This assumes that ${percent} of testers drop out, as in your closed tests: ${record.reported} of ${record.invited} people invited sent a report.`;
}
