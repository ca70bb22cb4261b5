import { z } from "zod";
import { patternShape } from "./pattern-document";
import {
  documentParts,
  idSchema,
  labelSchema,
  sectionShaping,
  type DeepReadonly,
  type PatternParts,
} from "./schema-parts";

export const PATTERN_FORMAT_1 = "sizewright/pattern@1";

function pieceShape<Value>({ positiveWhole, name }: PatternParts<Value>) {
  const section = z.strictObject({
    from: name,
    to: name,
    rows: name,
    yarn: name.optional(),
    shaping: sectionShaping(positiveWhole).optional(),
  });
  return z.strictObject({
    id: idSchema,
    label: labelSchema,
    fabric: name,
    made: positiveWhole,
    yarn: name,
    start: z.enum(["hem", "neck", "side"]).optional(),
    mirrored: z.boolean().optional(),
    sections: z.array(section),
  });
}

/** Schema of the pattern document of format 1, with pieces of sections in the place of the garment: read, never written. */
export function patternShape1<Value>(parts: PatternParts<Value>) {
  return patternShape(parts)
    .omit({ garment: true, sampleSize: true, origin: true })
    .extend({ format: z.literal(PATTERN_FORMAT_1), pieces: z.array(pieceShape(parts)) });
}

export const patternDocument1Schema = patternShape1(documentParts);

export type PatternDocument1 = DeepReadonly<z.infer<typeof patternDocument1Schema>>;
/** As it is typed in a draft. */
export type TypedPattern1 = DeepReadonly<z.infer<ReturnType<typeof patternShape1<number | string>>>>;
