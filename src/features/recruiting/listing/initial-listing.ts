import type { PatternDocument, Places } from "@/engine/pattern";
import { gaugeOver } from "@/engine/units";
import { askableMeasurements, bodyField } from "./field-names";
import { USUAL_SPOTS } from "./same-for-all";
import { typedNotice, typedPlaces } from "./typed-listing";
import type { NoticeFacts, TypedListing } from "./schema";

/** A first text of what testers do, to be edited; common practice, no source. */
const ASKS =
  "Make the garment in your assigned size, and report your washed swatch, the counts you worked, the finished measurements, the weight of the yarn you used, and how it fits.";

/** A first text of the agreement, to be edited; common practice, no source. */
const AGREEMENT =
  "I will finish the garment and send my report by the agreed date, or say early that I cannot. I will not share the pattern or its numbers until it is published. I will report my measurements as they are, even if they differ from the pattern.";

interface NewListing {
  readonly title: string;
  readonly places: Places | null;
  readonly timeZone: string;
  readonly notice?: NoticeFacts | null;
}

/**
 * A new listing: what the pattern already says, and texts to edit.
 *
 * @param places of an existing call; null for a new one, which starts with the usual spots.
 * @param timeZone of the person who creates it; "" if unknown.
 * @param notice of the owner's last test.
 */
export function initialListing(
  pattern: PatternDocument,
  { title, places, timeZone, notice }: NewListing,
): TypedListing {
  return {
    title,
    ...typedPlaces(places ?? usualPlaces(pattern)),
    timeZone,
    asks: ASKS,
    yarn: yarnWords(pattern),
    tools: toolWords(pattern),
    ...typedBody(pattern),
    agreement: AGREEMENT,
    ...{ progressPhotos: "release", finishedPhotos: "release" },
    ...typedNotice(notice ?? {}),
  };
}

function usualPlaces({ sizes }: PatternDocument): Places {
  return Object.fromEntries(sizes.map(({ id }) => [id, USUAL_SPOTS]));
}

/** Asks for the measurements that targets are based on, and for the one that orders the sizes, which decides the size. */
function typedBody(pattern: PatternDocument): TypedListing {
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
      return `${named}: ${metresPerBall} m per ${gramsPerBall} g, or another yarn that gives the gauge.`;
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
      return `${label}: ${toolMm} mm ${tool}, or whichever size gives ${rounded(across)} stitches and ${rounded(along)} rows per 10 cm after washing.`;
    })
    .join("\n");
}
