import type { FieldChange } from "./merge-fields";

/** A field that needs the tester's decision, with its name in words. */
export interface AskedField {
  readonly field: string;
  readonly label: string;
  /** The text from another device; null if there is no conflict. */
  readonly there: string | null;
  readonly here: string | null;
  /** Why the field is not saved. */
  readonly message: string;
  /** True where the item was removed on another device: the page has no such field any more. */
  readonly isRemoved?: boolean;
}

/** The result of saving fields that a device sent. */
export type SaveAnswer =
  | { readonly status: "saved"; readonly asked: readonly AskedField[] }
  /** `isFinal`: trying again would not help. `asked`: what a form held that could not be saved. */
  | {
      readonly status: "failed";
      readonly message: string;
      readonly isFinal: boolean;
      readonly asked: readonly AskedField[];
    };

export type SendFields = (testerId: string, changes: readonly FieldChange[]) => Promise<SaveAnswer>;
