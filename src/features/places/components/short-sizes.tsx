import type { FitInSize } from "@/engine/places";
import type { LengthUnit } from "@/engine/units";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { differenceWords } from "../fit-words";
import type { BoardSize } from "../placing-board";

interface ShortSizesProps {
  readonly sizes: readonly BoardSize[];
  readonly measurements: readonly string[];
  readonly unit: LengthUnit;
}

/** Sizes with fewer than their least: who comes nearest, and what would have to give way. */
export function ShortSizes({ sizes, measurements, unit }: ShortSizesProps) {
  const short = sizes.filter(({ missing }) => missing > 0);
  if (short.length === 0) return null;
  return (
    <Section title="Sizes left short" intro="Who comes nearest to each, and what it would take.">
      <div className="grid gap-4 md:grid-cols-2">
        {short.map(({ id, label, missing, nearest }) => (
          <Sheet key={id}>
            <h3 className="mb-2">
              {label}: {missing} short of the least
            </h3>
            <NearestPeople {...{ nearest, measurements, unit }} />
          </Sheet>
        ))}
      </div>
    </Section>
  );
}

interface NearestPeopleProps extends Pick<ShortSizesProps, "measurements" | "unit"> {
  readonly nearest: BoardSize["nearest"];
}

function NearestPeople({ nearest, measurements, unit }: NearestPeopleProps) {
  if (nearest === null) return <p className="text-soft">Solved again, it would be filled.</p>;
  if (nearest.length === 0) return <p className="text-soft">Nobody else has applied who could be asked.</p>;
  return (
    <ul className="grid gap-3">
      {nearest.map(({ name, fit, takes }, at) => (
        <li key={at}>
          <bdi className="font-semibold wrap-anywhere">{name}</bdi>: {bodyWords(fit, measurements, unit)}. {takes}
        </li>
      ))}
    </ul>
  );
}

/** `bust 2 cm above, upper arm 1.5 cm below`. */
export function bodyWords({ differences }: FitInSize, measurements: readonly string[], unit: LengthUnit): string {
  return differences
    .map((difference, at) => `${(measurements[at] ?? "").toLowerCase()} ${differenceWords(difference, unit)}`)
    .join(", ");
}
