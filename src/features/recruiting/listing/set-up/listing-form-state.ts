import type { ListingAnswer } from "./listing-actions";
import { LEAST_OF_ALL, MOST_OF_ALL, WANTED_OF_ALL } from "../field-names";
import { commonSpots, usualSpots, type TypedSpots } from "../same-for-all";
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
  /** What all sizes have in common, in one box; null where each has its own. */
  readonly common: TypedSpots | null;
  readonly field: (name: string) => FieldState;
}

/** Boxes that stand for the fields of every size. */
const OF_ALL: ReadonlySet<string> = new Set([LEAST_OF_ALL, WANTED_OF_ALL, MOST_OF_ALL]);

/** Id of a field's element. */
export function fieldId(name: string): string {
  return `listing-${name}`;
}

/** The form as stored, or as last sent. */
export function listingFormState(
  read: TypedListing,
  { answer, sizes }: { answer: ListingAnswer | undefined; sizes: readonly { readonly id: string }[] },
): ListingFormState {
  const sent = answer?.typed ?? read;
  // Where two versions differ, each size shows its own two.
  const common = answer?.theirs == null ? commonSpots(sent, sizes) : null;
  const { least, wanted, most } = common ?? usualSpots();
  const typed: TypedListing = { ...sent, [LEAST_OF_ALL]: least, [WANTED_OF_ALL]: wanted, [MOST_OF_ALL]: most };
  return {
    common,
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
      return {
        id,
        errors,
        theirs: answer?.theirs == null || OF_ALL.has(name) || mine === others ? null : others,
        control,
      };
    },
  };
}
