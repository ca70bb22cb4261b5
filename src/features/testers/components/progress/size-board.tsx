import Link from "next/link";
import type { PatternDocument, Places } from "@/engine/pattern";
import { own } from "@/engine/pattern";
import { MatrixTable } from "@/ui/matrix-table";
import type { ProgressList } from "../../progress-list-data";
import type { ProgressState } from "../../tester-status-data";

interface SizeBoardProps {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly counts: ProgressList["counts"];
  readonly mayEdit: boolean;
}

const COLUMNS: readonly { key: string; label: string; states: readonly ProgressState[] }[] = [
  { key: "invited", label: "Invited", states: ["invited"] },
  { key: "accepted", label: "Accepted", states: ["accepted"] },
  { key: "swatch", label: "Swatch in", states: ["swatch in"] },
  { key: "making", label: "Making", states: ["making"] },
  { key: "reported", label: "Reported", states: ["reported in part", "reported"] },
  { key: "out", label: "Out", states: ["stopped", "declined", "withdrawn", "lapsed"] },
];

/** How many testers of each size are where, and whether a place of it stands empty. */
export function SizeBoard({ callId, pattern, places, counts, mayEdit }: SizeBoardProps) {
  return (
    <MatrixTable
      label="Testers by size"
      corner="Size"
      columns={[...COLUMNS.map(({ key, label }) => ({ key, label })), { key: "places", label: "Places" }]}
      rows={pattern.sizes.map(({ id, label }) => {
        const ofSize = counts.filter(({ size }) => size === id);
        const byColumn = COLUMNS.map(({ states }) =>
          ofSize.reduce((sum, { state, many }) => (states.includes(state) ? sum + many : sum), 0),
        );
        const standing = byColumn.slice(0, -1).reduce((sum, count) => sum + count, 0);
        return {
          key: id,
          head: <span className="font-serif text-lg">{label}</span>,
          cells: [
            ...byColumn,
            <PlaceCell key="places" {...{ callId, mayEdit, standing, wanted: own(places, id)?.wanted ?? 0 }} />,
          ],
        };
      })}
    />
  );
}

interface PlaceCellProps {
  readonly callId: string;
  readonly mayEdit: boolean;
  /** Testers who take a place. */
  readonly standing: number;
  readonly wanted: number;
}

function PlaceCell({ callId, mayEdit, standing, wanted }: PlaceCellProps) {
  return (
    <>
      {standing} of {wanted}
      {standing < wanted && mayEdit ? (
        <Link href={`/calls/${callId}/places`} prefetch={false} className="text-link block min-h-6 whitespace-nowrap">
          Fill a place
        </Link>
      ) : null}
    </>
  );
}
