import { z } from "zod";

/** Rows of a list on one page. */
export const ROWS_A_PAGE = 50;

/** The requested page of a list; anything else is the first. */
export const pageNumberSchema = z
  .preprocess((value: unknown) => (Array.isArray(value) ? value[0] : value), z.coerce.number().int().min(1).max(1e6))
  .catch(1);

export interface PageOfList {
  readonly page: number;
  readonly pages: number;
  /** How many rows come before it. */
  readonly skip: number;
  readonly take: number;
}

/** The shown page of a list: the requested one, or the last where there are fewer. */
export function pageOfList(asked: number, rows: number, take: number = ROWS_A_PAGE): PageOfList {
  const pages = Math.max(1, Math.ceil(rows / take));
  const page = Math.min(asked, pages);
  return { page, pages, skip: (page - 1) * take, take };
}
