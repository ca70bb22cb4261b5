import { z } from "zod";
import { garmentSchema } from "./garment-document";
import { MAX_MEASUREMENTS, PATTERN_FORMAT, patternSchema, type PatternDocument } from "./pattern-document";
import { byId, idSchema, type DeepReadonly } from "./schema-parts";

export const PATTERN_FORMAT_2 = "sizewright/pattern@2";

const share = z.number().min(0, { error: "must be 0 or more." }).max(1, { error: "must be at most 1." });
const onEdge = z.tuple([idSchema, share]);
const measurement = patternSchema.shape.measurements.element;

/** Where on the drawing: from edge to edge, or, as in format 1, at shares of a piece's width and height. */
const on = z.union([z.strictObject({ from: onEdge, to: onEdge }), measurement.shape.on.unwrap()]);

/** Schema of the pattern document of format 2: as format 1, with a garment in the place of its pieces. */
export const patternSchema2 = patternSchema.omit({ pieces: true }).extend({
  format: z.literal(PATTERN_FORMAT_2),
  sampleSize: idSchema.optional(),
  origin: byId(byId(z.enum(["typed", "solved", "locked"]))).optional(),
  garment: garmentSchema,
  measurements: z.array(measurement.extend({ on: on.optional() })).max(MAX_MEASUREMENTS, {
    error: `must hold at most ${MAX_MEASUREMENTS} measurements.`,
  }),
});

export type PatternDocument2 = DeepReadonly<z.infer<typeof patternSchema2>>;

/** What both formats have, in format 1: the pattern without its pieces and without the places of its measurements. */
export function withoutGarment(pattern: PatternDocument2): PatternDocument {
  const { garment: _garment, sampleSize: _sampleSize, origin: _origin, measurements, ...rest } = pattern;
  return {
    ...rest,
    format: PATTERN_FORMAT,
    pieces: [],
    measurements: measurements.map(({ on: _on, ...measurement }) => measurement),
  };
}
