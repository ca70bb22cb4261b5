import type { FieldChange } from "./merge-fields";

/** A field that needs her, with its name in words. */
export interface AskedField {
  readonly field: string;
  readonly label: string;
  /** What another device put there; null where nothing stands against hers. */
  readonly there: string | null;
  readonly here: string | null;
  /** Why hers is not kept. */
  readonly says: string;
}

/** What becomes of fields that a device sent. */
export type KeepAnswer =
  | { readonly status: "kept"; readonly asked: readonly AskedField[] }
  /** `isOver`: trying again changes nothing. `asked`: what a form held that could not be kept. */
  | {
      readonly status: "failed";
      readonly says: string;
      readonly isOver: boolean;
      readonly asked: readonly AskedField[];
    };

export type SendFields = (testerId: string, changes: readonly FieldChange[]) => Promise<KeepAnswer>;
