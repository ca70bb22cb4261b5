import type { Kind, World } from "./access-world";

/**
 * What an action answers: "done" (whatever its domain says), a known failure's code, or the path that it leads on to, with
 * [id] for an id in it.
 */
export type ActionAnswer = "done" | "signed-out" | "not-found" | "not-allowed" | `/${string}`;

export interface ActionRow {
  /** What it is handed: values, or the fields of a form. */
  readonly sends: (world: World) => { values: unknown[] } | { form: Readonly<Record<string, string>> };
  readonly answers: Readonly<Record<Kind, ActionAnswer>>;
}

/** For those with a part in the pattern that lets them change it. */
export const EDITS: Readonly<Record<Kind, ActionAnswer>> = {
  visitor: "signed-out",
  "another designer": "not-found",
  viewer: "not-allowed",
  editor: "done",
  owner: "done",
};
