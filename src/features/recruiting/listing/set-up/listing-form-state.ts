import type { ListingAnswer } from "./listing-actions";
import type { TypedListing } from "../schema";

/** What a field of the form shows. */
interface FieldState {
  readonly id: string;
  readonly errors: readonly string[];
  /** Null unless somebody else has saved a different text. */
  readonly theirs: string | null;
  readonly control: {
    readonly id: string;
    readonly name: string;
    readonly defaultValue: string;
    readonly "aria-describedby": string;
    readonly "aria-invalid": boolean | undefined;
  };
}

export interface ListingFormState {
  readonly field: (name: string) => FieldState;
}

/** Id of a field's element. */
export function fieldId(name: string): string {
  return `listing-${name}`;
}

/** The form as stored, or as last sent. */
export function listingFormState(read: TypedListing, answer: ListingAnswer | undefined): ListingFormState {
  const typed = answer?.typed ?? read;
  return {
    field: (name) => {
      const id = fieldId(name);
      const errors = (answer?.faults ?? []).filter(({ field }) => field === name).map(({ message }) => message);
      const [mine, others] = [typed[name] ?? "", answer?.theirs?.[name] ?? ""];
      const control = {
        id,
        name,
        defaultValue: mine,
        "aria-describedby": `${id}-hint ${id}-error`,
        "aria-invalid": errors.length > 0 ? true : undefined,
      };
      return { id, errors, theirs: answer?.theirs == null || mine === others ? null : others, control };
    },
  };
}
