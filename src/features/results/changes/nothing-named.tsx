import Link from "next/link";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { gapBoard, type BoardCell } from "../gaps/gap-board";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { moreTesters } from "../verdict-copy";
import type { PanelCall } from "../gaps/cell-panel";

interface NothingNamedProps {
  readonly results: Results<PageParts<"changes">>;
  readonly call: PanelCall;
  readonly unit: LengthUnit;
}

/** Shown where no cause is named: what that means, and what can still be done. */
export function NothingNamed({ results, call, unit }: NothingNamedProps) {
  const gapsHref = callPageHref(call.callId, "differences");
  const board = gapBoard(results, unit);
  if (board.sizes.every(({ testers }) => testers === 0))
    return (
      <EmptyState title="No reports yet" actions={<Paste call={call} />}>
        <p>
          Once testers send measurements, this page shows which numbers of the pattern may be wrong, and what changing
          them would do.
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
            See the differences
          </ButtonLink>
        }
      >
        <p>
          {board.tally.holds} of {rows.length} measurements and sizes come out as planned, and none is different from
          the pattern.
          {board.tally.open + board.tally.none > 0
            ? ` There is not enough data for the other ${board.tally.open + board.tally.none} yet; Differences shows how many more testers would settle them.`
            : ""}
        </p>
      </EmptyState>
    );
  return (
    <Section
      title="Different from the pattern, but no single cause explains it"
      intro="No single number of the pattern explains these together; each may have its own reason. Look at what the testers worked, ask for more reports, or correct the numbers yourself."
    >
      <TableFrame label="Measurements that are different from the pattern">
        <table className={`${TABLE} numbers`}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Measurement, size</th>
              <th scope="col">Result</th>
              <th scope="col">What would settle it</th>
              {call.mayEdit ? <th scope="col">Correct it yourself</th> : null}
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
  if (state === "off") return "nothing more";
  return moreTesters(cell.testersToSettle, size.label);
}

function Paste({ call }: { readonly call: PanelCall }) {
  if (!call.mayEdit) return null;
  return <ButtonLink href={`/patterns/${call.patternId}/reports/paste?call=${call.callId}`}>Import reports</ButtonLink>;
}
