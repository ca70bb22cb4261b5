import type { FitInSize } from "@/engine/places";
import type { LengthUnit } from "@/engine/units";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { differenceWords } from "../fit-copy";
import type { LoadedBoard } from "../loaders";
import type { StoredSide } from "../stored-board";

interface ShortSizesProps {
  readonly loaded: LoadedBoard;
  readonly measurements: readonly string[];
  readonly unit: LengthUnit;
}

/** Sizes with too few testers: who fits best, and what it would take. */
export function ShortSizes({ loaded, measurements, unit }: ShortSizesProps) {
  const { board, side } = loaded;
  const short = board.sizes.filter(({ missing }) => missing > 0);
  if (short.length === 0) return null;
  return (
    <Section title="Sizes with too few testers" intro="Who fits best, and what it would take.">
      <div className="grid gap-4 md:grid-cols-2">
        {short.map(({ id, label, missing }) => (
          <Sheet key={id}>
            <h3 className="mb-2">
              {label}: {missing} {missing === 1 ? "tester" : "testers"} missing
            </h3>
            <NearestPeople {...{ loaded, measurements, unit }} nearest={side.nearest.find(({ size }) => size === id)} />
          </Sheet>
        ))}
      </div>
    </Section>
  );
}

interface NearestPeopleProps extends ShortSizesProps {
  readonly nearest: StoredSide["nearest"][number] | undefined;
}

function NearestPeople({ nearest, loaded: { people }, measurements, unit }: NearestPeopleProps) {
  if (nearest === undefined) return <p className="text-soft">Assigning sizes again would fill it.</p>;
  const known = nearest.people.flatMap(({ application, takes }) => {
    const fit = people.fitOf(application, nearest.size);
    return fit === null ? [] : [{ application, takes, fit }];
  });
  if (known.length === 0) return <p className="text-soft">No other applicant could take this size.</p>;
  return (
    <ul className="grid gap-3">
      {known.map(({ application, fit, takes }) => (
        <li key={application}>
          <bdi className="font-semibold wrap-anywhere">{people.nameOf(application)}</bdi>:{" "}
          {bodyWords(fit, measurements, unit)}. {people.words.wouldTake(takes)}
        </li>
      ))}
    </ul>
  );
}

/** `bust 2 cm above, upper arm 1.5 cm below`. */
export function bodyWords({ differences }: FitInSize, measurements: readonly string[], unit: LengthUnit): string {
  return differences
    .map((difference, index) => `${(measurements[index] ?? "").toLowerCase()} ${differenceWords(difference, unit)}`)
    .join(", ");
}
