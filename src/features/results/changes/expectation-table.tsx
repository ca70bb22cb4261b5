import type { Expectation } from "@/engine/revision";
import type { Measurement, PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import { IntervalRuler, IntervalRulerScale } from "@/ui/interval-ruler";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { againstTarget, targetWords } from "../target-copy";
import { cellState, plain, verdictWords } from "../verdict-copy";
import { cellEstimate, MARKS } from "../components/ruler-marks";

interface ExpectationTableProps {
  readonly touched: readonly Expectation[];
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
}

const REACH = 3;

/** Every measurement that a correction changes: what the pattern plans, and what to expect. */
export function ExpectationTable({ touched, pattern, unit }: ExpectationTableProps) {
  return (
    <TableFrame label="Expected measurements after the correction">
      <IntervalRulerScale reach={REACH} />
      <table className={`${TABLE} max-md:text-sm max-md:[&_td]:px-2`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col" className="align-bottom">
              Measurement, size
            </th>
            <NumberHead over="Pattern" under={`plans, ${unit}`} />
            <NumberHead over="Garments" under={`now, ${unit}`} />
            <NumberHead over="Garments" under={`after, ${unit}`} />
            <th scope="col" className="min-w-40 align-bottom">
              Compared with the target
            </th>
            <th scope="col" className="align-bottom">
              Difference before
            </th>
            <th scope="col" className="align-bottom">
              Difference after
            </th>
          </tr>
        </thead>
        <tbody>
          {touched.map((expectation) => (
            <Row key={`${expectation.size} ${expectation.measurement}`} {...{ expectation, pattern, unit }} />
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function NumberHead({ over, under }: { readonly over: string; readonly under: string }) {
  return (
    <th scope="col" className="whitespace-nowrap text-right align-bottom">
      {over}
      <br />
      {under}
    </th>
  );
}

interface RowProps extends Omit<ExpectationTableProps, "touched"> {
  readonly expectation: Expectation;
}

function Row({ expectation, pattern, unit }: RowProps) {
  const { targetCm, designCm, expectedCm, lowCm, highCm, gap } = expectation;
  const measurement = pattern.measurements.find(({ id }) => id === expectation.measurement);
  const size = pattern.sizes.find(({ id }) => id === expectation.size)?.label ?? "";
  const number = (cm: number | null) => (cm === null ? "" : formatLengthNumber(cm, unit));
  const tolerance = measurement?.toleranceCm ?? 1;
  const expected = { expectedCm: expectedCm.after, targetCm: targetCm.after, toleranceCm: tolerance };
  const against = againstTarget(expected);
  return (
    <tr className={TABLE_ROW}>
      <th scope="row" className="min-w-36 font-normal wrap-anywhere">
        {measurement?.letter} {measurement?.label}, <strong>{size}</strong>
      </th>
      <td className="whitespace-nowrap text-right">
        {number(designCm.before)} → <strong>{number(designCm.after)}</strong>
      </td>
      <td className="text-right">{number(expectedCm.before)}</td>
      <td className="text-right">
        <strong>{number(expectedCm.after)}</strong>
        {lowCm === null || highCm === null ? null : (
          <span className="block whitespace-nowrap text-sm text-soft">
            {number(lowCm)} to {number(highCm)}
          </span>
        )}
      </td>
      <td className={against === "missed" ? "font-semibold text-thread" : ""}>
        {against === "missed" ? <span aria-hidden="true">▲ </span> : null}
        {targetWords(expected, unit)}
        {targetCm.after === null ? null : (
          <span className="block text-sm font-normal text-soft">
            {number(targetCm.after)} ± {plain(tolerance, unit)}
          </span>
        )}
      </td>
      <GapSide cell={gap.before} {...{ measurement, tolerance, unit, size }} />
      <GapSide cell={gap.after} {...{ measurement, tolerance, unit, size }} />
    </tr>
  );
}

interface GapSideProps {
  readonly measurement: Pick<Measurement, "girth" | "on"> | undefined;
  readonly cell: Expectation["gap"]["before"];
  readonly tolerance: number;
  readonly unit: LengthUnit;
  readonly size: string;
}

function GapSide({ cell, measurement = {}, tolerance, unit, size }: GapSideProps) {
  const estimate = cellEstimate(cell, { toleranceCm: tolerance, reach: REACH });
  return (
    <td className="min-w-36">
      <IntervalRuler mark={MARKS[cellState(cell)]} estimate={estimate} />
      <span className="block text-center text-[0.78rem] leading-tight">
        {verdictWords(cell, { measurement, unit, size })}
      </span>
    </td>
  );
}
