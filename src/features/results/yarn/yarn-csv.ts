import { csvText } from "@/server/csv";
import { fromMetres } from "@/ui/format-yarn-length";
import type { YarnBoard } from "./yarn-board";

/** Every yarn's needs by size for a spreadsheet, unrounded except for the amounts to publish. */
export function yarnCsv({ sheets, unit, roundTo }: YarnBoard): string {
  const inUnit = (metres: number | null) => (metres === null ? "" : fromMetres(metres, unit));
  const lines = sheets.flatMap(({ yarn, rows }) =>
    rows.map(({ size, stitches, expectedMetres, upperMetres, publishMetres, balls, reports }) => ({
      yarn: yarn.label,
      size: size.label,
      stitches,
      [`expected ${unit}`]: inUnit(expectedMetres),
      [`9 in 10 have enough with ${unit}`]: inUnit(upperMetres),
      [`to publish ${unit}, up to the next ${roundTo}`]:
        publishMetres === null ? "" : Math.round(fromMetres(publishMetres, unit)),
      balls: balls ?? "",
      "testers who weighed it": reports,
    })),
  );
  return csvText(lines);
}
