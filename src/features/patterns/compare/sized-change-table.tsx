import { MatrixTable } from "@/ui/matrix-table";
import type { SizedChange, Sides } from "./sized-changes";

interface SizedChangeTableProps {
  readonly label: string;
  readonly corner: string;
  readonly sizes: readonly { readonly key: string; readonly label: string }[];
  readonly changes: readonly SizedChange[];
}

/** Changed numbers, sizes across, old and new. */
export function SizedChangeTable({ label, corner, sizes, changes }: SizedChangeTableProps) {
  const rows = changes.map(({ key, label: head, sides }) => ({
    key,
    head,
    cells: sides.map((side, index) => (
      <SideCell key={index} side={side} ofAll={sides.length === 1 && sizes.length > 1} />
    )),
  }));
  return <MatrixTable label={label} corner={corner} columns={sizes} rows={rows} />;
}

function SideCell({ side: { was, becomes }, ofAll }: { readonly side: Sides; readonly ofAll: boolean }) {
  if (was === becomes) return <span className="numbers text-soft">{was ?? "none"}</span>;
  const line = ofAll ? "" : "block whitespace-nowrap";
  return (
    <span className="numbers">
      <span className={`${line} text-soft`}>{was ?? "none"}</span>{" "}
      <span className={line}>
        <span aria-label="becomes" role="img">
          →
        </span>{" "}
        <strong>{becomes ?? "none"}</strong>
      </span>
      {ofAll ? ", in every size" : null}
    </span>
  );
}
