import { ASTM_D5585_1995, ASTM_D5585_2011 } from "./astm-d5585";
import type { BodyTable } from "./body-table";
import { CYC_WOMAN } from "./cyc-woman";
import { EN_13402_LETTERS, EN_13402_SCALE } from "./en-13402-women";

/** The published tables of body measurements, in the order in which they are offered. */
export const BODY_TABLES: readonly BodyTable[] = [
  CYC_WOMAN,
  EN_13402_LETTERS,
  EN_13402_SCALE,
  ASTM_D5585_2011,
  ASTM_D5585_1995,
];
