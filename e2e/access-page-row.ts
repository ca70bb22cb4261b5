import { everyone, type Kind, type World } from "./access-world";

/**
 * What a page or a route answers: "shown" (200), "nothing" (404, the same as for an address that never was), the path
 * that it leads on to, or another status.
 */
export type PageAnswer = "shown" | "nothing" | `/${string}` | number;

export interface PageRow {
  readonly path: (world: World) => string;
  readonly answers: Readonly<Record<Kind, PageAnswer>>;
}

/** For those with any part in the pattern. */
export const SEES: Readonly<Record<Kind, PageAnswer>> = {
  visitor: "/sign-in",
  "another designer": "nothing",
  viewer: "shown",
  editor: "shown",
  owner: "shown",
};

/** For the tester, who is "another designer". */
export const TESTS: Readonly<Record<Kind, PageAnswer>> = {
  ...everyone<PageAnswer>("nothing"),
  "another designer": "shown",
};
