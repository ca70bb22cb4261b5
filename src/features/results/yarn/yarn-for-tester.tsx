import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { publishedMetres } from "@/engine/yarn";
import { formatYarnNumber, toMetres, yarnUnit } from "@/ui/format-yarn-length";
import type { YarnForSize } from "./yarn-for-tester-data";

/** Amounts are rounded up to a multiple of this many metres or yards. */
const ROUND_TO = 10;

interface YarnForTesterProps {
  readonly needs: readonly YarnForSize[];
  readonly yarns: PatternDocument["yarns"];
  readonly unit: LengthUnit;
}

/** How much of each yarn a size needs: length, weight and balls. */
export function YarnForTester({ needs, yarns, unit }: YarnForTesterProps) {
  const inUnit = yarnUnit(unit);
  return (
    <>
      <ul className="numbers">
        {yarns.flatMap(({ id, label, colour, metresPerBall, gramsPerBall }) => {
          const upperMetres = needs.find(({ yarn }) => yarn === id)?.upperMetres;
          const metres = publishedMetres(upperMetres ?? null, toMetres(ROUND_TO, inUnit));
          if (upperMetres === undefined || metres === null) return [];
          const balls = Math.ceil(upperMetres / metresPerBall);
          return [
            <li key={id} className="wrap-anywhere">
              {label}
              {colour ? `, ${colour}` : null}:{" "}
              <span className="font-semibold">
                {formatYarnNumber(metres, inUnit)} {inUnit}
              </span>
              , {Math.ceil((metres * gramsPerBall) / metresPerBall)} g, {balls} {balls === 1 ? "ball" : "balls"}
            </li>,
          ];
        })}
      </ul>
      <p className="text-sm text-soft">
        Enough for 9 in 10 people, each at their own gauge; calculated from what testers have used so far.
      </p>
    </>
  );
}
