import type { PatternDocument } from "@/engine/pattern";
import { cardigan } from "./cardigan";
import { dropShoulder } from "./drop-shoulder";
import { meshTee } from "./mesh-tee";
import { raglan } from "./raglan";
import { roundYoke } from "./round-yoke";
import { setIn } from "./set-in";
import { tank } from "./tank";
import { vest } from "./vest";

/** The eight garments that the drawing is tried on, all invented. */
export const GARMENTS: Readonly<Record<string, PatternDocument>> = {
  "drop-shoulder": dropShoulder,
  "set-in": setIn,
  raglan,
  "round-yoke": roundYoke,
  vest,
  cardigan,
  "mesh-tee": meshTee,
  tank,
};
export { SIZES } from "./made-garment";
