import type { Tape } from "@/engine/garment-view";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { TABLE_ROW } from "@/ui/table-frame";
import { shortLetter } from "./drawing-copy";

interface PieceMeasurementsProps {
  /** `Measured on the sleeve in M`. */
  readonly caption: string;
  readonly lines: readonly Pick<Tape, "measurement" | "letter" | "label" | "cm">[];
  readonly unit: LengthUnit;
}

/** The letters on a schematic, what they measure and the lengths. */
export function PieceMeasurements({ caption, lines, unit }: PieceMeasurementsProps) {
  return (
    <table className="mt-6 w-full border-collapse border-t border-line text-left [&_td]:py-1.5 [&_th]:py-1.5">
      <caption className="sr-only">{caption}</caption>
      <tbody>
        {lines.map(({ measurement, letter, label, cm }) => (
          <tr key={measurement} className={`${TABLE_ROW} align-top`}>
            <td className="w-8 pr-2 font-bold whitespace-nowrap">{shortLetter(letter)}</td>
            <th scope="row" className="pr-3 font-normal wrap-anywhere">
              {label}
            </th>
            <td className="numbers whitespace-nowrap text-right">
              {cm === null ? <span className="text-soft">no counts</span> : formatLength(cm, unit)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
