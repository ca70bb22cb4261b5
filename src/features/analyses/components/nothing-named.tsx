import Link from "next/link";
import type { LengthUnit } from "@/engine/units";
import { ButtonLink } from "@/ui/button";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { gapBoard, type BoardCell } from "../gap-board";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { moreTesters } from "../verdict-words";
import type { PanelCall } from "./cell-panel";

interface NothingNamedProps {
  readonly results: Results<PageParts<"changes">>;
  readonly call: PanelCall;
  readonly unit: LengthUnit;
}

/** Where no cause is named: what that means, and what can be done all the same. */
export function NothingNamed({ results, call, unit }: NothingNamedProps) {
  const gapsHref = `/calls/${call.callId}/gaps`;
  const board = gapBoard(results, unit);
  if (board.sizes.every(({ testers }) => testers === 0))
    return (
      <EmptyState title="No reports yet" actions={<Paste call={call} />}>
        <p>
          As soon as testers’ measurements are here, this page says which numbers of the pattern they call into
          question, and what would follow from changing them.
        </p>
      </EmptyState>
    );
  const rows = board.rows.flatMap(({ measurement, cells }) => cells.map((cell) => ({ measurement, cell })));
  const off = rows.filter(({ cell }) => cell.state === "off" || cell.state === "leaning");
  if (off.length === 0)
    return (
      <EmptyState
        title="Nothing to change so far"
        actions={
          <ButtonLink href={gapsHref} look="quiet">
            See the gaps
          </ButtonLink>
        }
      >
        <p>
          {board.tally.holds} of {rows.length} measurements and sizes came out as promised, and none came out otherwise.
          {board.tally.open + board.tally.none > 0
            ? ` Of the other ${board.tally.open + board.tally.none} too little is known yet; the gaps page says how many more testers would settle them.`
            : ""}
        </p>
      </EmptyState>
    );
  return (
    <Section
      title="Off, but no single cause explains it"
      intro="No one number of the pattern explains these together well enough to name it: each may have a reason of its own. Look at what its testers worked, ask for the reports that would settle it, or correct what it is worked from by hand."
    >
      <TableFrame label="Measurements that are off">
        <table className={`${TABLE} numbers`}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Measurement, size</th>
              <th scope="col">How it stands</th>
              <th scope="col">What would settle it</th>
              {call.mayEdit ? <th scope="col">By hand</th> : null}
            </tr>
          </thead>
          <tbody>
            {off.map(({ measurement, cell }) => (
              <tr key={cell.key} className={TABLE_ROW}>
                <th scope="row" className="min-w-36 font-normal wrap-anywhere">
                  <Link href={`${gapsHref}?cell=${cell.key}#at-${cell.key}`} className="text-link">
                    {measurement.label}, {cell.size.label}
                  </Link>
                </th>
                <td className="min-w-32">{cell.words}</td>
                <td className="min-w-36">{settling(cell)}</td>
                {call.mayEdit ? (
                  <td>
                    <Link href={`/calls/${call.callId}/correct?cell=${cell.key}`} className="text-link">
                      Correct <span className="sr-only">{`${measurement.label} in ${cell.size.label} `}</span>
                    </Link>
                  </td>
                ) : null}
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </Section>
  );
}

function settling({ cell, state, size }: BoardCell): string {
  if (state === "off") return "settled";
  return cell.testersToSettle === null
    ? "more testers than one can ask"
    : moreTesters(cell.testersToSettle, size.label);
}

function Paste({ call }: { readonly call: PanelCall }) {
  if (!call.mayEdit) return null;
  return <ButtonLink href={`/patterns/${call.patternId}/reports/paste?call=${call.callId}`}>Paste reports</ButtonLink>;
}
