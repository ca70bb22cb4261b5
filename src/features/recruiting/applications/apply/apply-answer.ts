/** A body measurement that applicants are asked for. */
export interface AskedMeasurement {
  readonly id: string;
  readonly label: string;
  readonly how: string;
  /** It decides the size, so it is required. */
  readonly decides: boolean;
  /** The least and the largest of the pattern's sizes, cm. */
  readonly fromCm: number;
  readonly toCm: number;
}

/** A size that has spots. */
export interface OfferedSize {
  readonly id: string;
  readonly label: string;
  /** The body it is made for, in words and in both units. */
  readonly body: string;
}

export interface AgreementShown {
  readonly version: number;
  readonly text: string;
}

/** What applicants of a call are asked. */
export interface AskedOfApplicants {
  readonly body: readonly AskedMeasurement[];
  readonly sizes: readonly OfferedSize[];
  readonly agreement: AgreementShown;
  /** In years. */
  readonly minimumAge: number;
}

/** The form's fields as typed, by name; groups of checkboxes can have several values. */
export type TypedApplication = Readonly<Record<string, readonly string[]>>;

/** Messages by field. */
export type MessagesByField = Readonly<Record<string, readonly string[]>>;

/** Why an application was not taken, beyond its fields. */
export type Refusal = "over" | "closed" | "full" | "gone" | "known" | "agreement";

/** Why somebody cannot apply: nobody can, or they have applied already. */
export type NotTakingWhy =
  { readonly why: "over" | "closed" | "full" | "gone" } | { readonly why: "known"; readonly ownLink: string };

/** The answer to an application that was not stored: everything typed, and the errors. */
export interface ApplyAnswer {
  readonly typed: TypedApplication;
  readonly faults: MessagesByField;
  /** Unusual values, questioned once: sent again unchanged, they are accepted. */
  readonly doubts: MessagesByField;
  readonly refusal: Refusal | null;
  /** Any other failure. */
  readonly message: string | null;
  /** The current agreement, if it differs from the one that was read. */
  readonly agreement: AgreementShown | null;
  /** The existing application's link, if its account is signed in. */
  readonly ownLink: string | null;
}

/** The text of a field; "" if it is empty. */
export function typedText(typed: TypedApplication | undefined, field: string): string {
  return typed?.[field]?.[0] ?? "";
}

export const PREFERENCES = ["prefers.0", "prefers.1", "prefers.2"] as const;

/** The field of a body measurement. */
export function bodyField(measurementId: string): string {
  return `body.${measurementId}`;
}
