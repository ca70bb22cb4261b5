import Link from "next/link";
import { Button } from "@/ui/button";
import { Field, Select } from "@/ui/field";
import type { Revision } from "../data";

interface CompareFormProps {
  /** Address of the comparison. */
  readonly address: string;
  readonly revisions: readonly Revision[];
  readonly from: Revision | null;
  readonly to: Revision | null;
}

const LONGEST_REASON = 60;

/** Chooses two revisions; works without scripts. */
export function CompareForm({ address, revisions, from, to }: CompareFormProps) {
  return (
    <form action={address} className="grid items-end gap-x-5 sm:grid-cols-[1fr_1fr_auto]">
      <RevisionSelect name="from" label="From revision" revisions={revisions} chosen={from} />
      <RevisionSelect name="to" label="To revision" revisions={revisions} chosen={to} />
      <div className="mb-5 flex flex-wrap gap-3">
        <Button type="submit" look="quiet">
          Compare
        </Button>
        {from && to && from.number !== to.number ? (
          <Link href={`${address}?from=${to.number}&to=${from.number}`} className="text-link py-2.5" scroll={false}>
            Swap
          </Link>
        ) : null}
      </div>
    </form>
  );
}

interface RevisionSelectProps {
  readonly name: string;
  readonly label: string;
  readonly revisions: readonly Revision[];
  readonly chosen: Revision | null;
}

function RevisionSelect({ name, label, revisions, chosen }: RevisionSelectProps) {
  return (
    <Field id={`compare-${name}`} label={label}>
      {/* Keyed by what is chosen, for a swap leads to this same page. */}
      <Select key={chosen?.number} id={`compare-${name}`} name={name} defaultValue={chosen?.number}>
        {revisions.map(({ number, reason }) => (
          <option key={number} value={number}>
            {number}: {reason.length > LONGEST_REASON ? `${reason.slice(0, LONGEST_REASON)}…` : reason}
          </option>
        ))}
      </Select>
    </Field>
  );
}
