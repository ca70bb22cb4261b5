import type { OpeningAnswer } from "../actions";
import type { TypedOpening } from "../schema";

/** What a form's field shows. */
export interface FieldState {
  readonly id: string;
  readonly errors: readonly string[];
  /** Null where nobody else has saved another text. */
  readonly theirs: string | null;
  readonly control: {
    readonly id: string;
    readonly name: string;
    readonly defaultValue: string;
    readonly "aria-describedby": string;
    readonly "aria-invalid": boolean | undefined;
  };
}

export interface OpeningFormState {
  readonly field: (name: string) => FieldState;
}

/** Id of the element that a field's name leads to. */
export function fieldId(name: string): string {
  return `opening-${name}`;
}

/** The form as it was read, or as the last sending left it. */
export function openingFormState(read: TypedOpening, answer: OpeningAnswer | undefined): OpeningFormState {
  const typed = answer?.typed ?? read;
  return {
    field: (name) => {
      const id = fieldId(name);
      const errors = (answer?.faults ?? []).filter(({ field }) => field === name).map(({ says }) => says);
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
