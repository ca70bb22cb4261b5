import { testersNeeded } from "@/engine/gaps";
import type { PatternDocument, Places } from "@/engine/pattern";
import { gaugeOver } from "@/engine/units";
import { askableMeasurements, bodyField } from "./field-names";
import { typedPlaces } from "./typed-opening";
import { usualInvitations } from "./usual-invitations";
import type { TypedOpening } from "./schema";

/** What a tester is to do, as a beginning to change; common practice, no source. */
const ASKS =
  "Make the garment in the size you are given, and send: your washed swatch, the counts you worked, the finished measurements, the yarn by weight, and how it fits.";

/** What testers agree to, as a beginning to change; common practice, no source. */
const AGREEMENT =
  "I will finish the garment and send my report by the day that is given, or say early that I cannot. I will keep the pattern and its numbers to myself until it is published. I will send my measurements as I find them, also where they do not come out as the pattern says.";

/**
 * An opening as it begins: what the pattern knows already, and texts to change.
 *
 * @param places of a call that is there already; null for a new one, whose places begin at the testers needed.
 * @param timeZone of whoever begins it; "" where it is not known.
 */
export function begunOpening(
  pattern: PatternDocument,
  { title, places, timeZone }: { title: string; places: Places | null; timeZone: string },
): TypedOpening {
  return {
    title,
    ...typedPlaces(places ?? neededPlaces(pattern)),
    timeZone,
    asks: ASKS,
    yarn: yarnWords(pattern),
    tools: toolWords(pattern),
    ...typedBody(pattern),
    agreement: AGREEMENT,
  };
}

function neededPlaces(pattern: PatternDocument): Places {
  const least = testersNeeded(pattern);
  if (least === null) return {};
  const wanted = usualInvitations(least) ?? least;
  return Object.fromEntries(pattern.sizes.map(({ id }) => [id, { least, wanted }]));
}

/** Asked for is what targets are made from, and what orders the sizes; that alone decides the size at first. */
function typedBody(pattern: PatternDocument): TypedOpening {
  const targets = pattern.measurements.flatMap(({ target }) =>
    target !== undefined && "body" in target ? [target.body] : [],
  );
  const asked = new Set([pattern.sizeBy, ...targets]);
  return Object.fromEntries(
    askableMeasurements(pattern)
      .filter(({ id }) => asked.has(id))
      .map(({ id, decides }) => [bodyField(id), id === pattern.sizeBy && decides ? "fit" : "asked"]),
  );
}

function yarnWords({ yarns }: PatternDocument): string {
  return yarns
    .map(({ label, colour, metresPerBall, gramsPerBall }) => {
      const named = colour === undefined || colour === "" ? label : `${label}, ${colour}`;
      return `${named}: ${metresPerBall} m to ${gramsPerBall} g, or another yarn that gives the gauge.`;
    })
    .join("\n");
}

function toolWords({ craft, fabrics }: PatternDocument): string {
  const tool = craft === "knitting" ? "needles" : "hook";
  const rounded = (count: number) => Number(count.toFixed(2));
  return fabrics
    .map(({ label, toolMm, gauge: { stitches, rows, overCm } }) => {
      const [across, along] = [
        gaugeOver({ count: stitches, overCm: overCm ?? 10 }),
        gaugeOver({ count: rows, overCm: overCm ?? 10 }),
      ];
      return `${label}: ${toolMm} mm ${tool}, or whatever gives ${rounded(across)} stitches and ${rounded(along)} rows to 10 cm, washed.`;
    })
    .join("\n");
}
