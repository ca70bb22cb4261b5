import { outlineGarment, parseOutlineInput } from "@/engine/garment";
import type { Verb } from "../verb";

export const outlineVerb: Verb = {
  name: "outline",
  summary: "takes a pattern and a size; prints each piece’s rows, stitches, area and stepped outline",
  run: (value) => {
    const parsed = parseOutlineInput(value);
    if (!parsed.ok) return parsed;
    const { pattern, size } = parsed.document;
    const { pieces, faults } = outlineGarment(pattern, size);
    return { ok: true, output: { pieces, faults: faults.map(({ message, ...at }) => ({ ...at, says: message })) } };
  },
};
