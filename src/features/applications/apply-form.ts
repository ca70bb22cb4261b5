/** A body measurement that applicants are asked for. */
export interface AskedMeasurement {
  readonly id: string;
  readonly label: string;
  readonly how: string;
  /** It decides the size, so that nobody can be placed without it. */
  readonly decides: boolean;
  /** The least and the largest of the pattern's sizes, cm. */
  readonly fromCm: number;
  readonly toCm: number;
}

/** A size that has places. */
export interface OfferedSize {
  readonly id: string;
  readonly label: string;
  /** The body that it is for, in words and in both units. */
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
}

/** The form's fields as typed, by name; those that can be ticked more than once have several. */
export type TypedApplication = Readonly<Record<string, readonly string[]>>;

/** Sentences by field. */
export type SaidByField = Readonly<Record<string, readonly string[]>>;

/** Why an application was not taken, beyond its fields. */
export type Refusal = "over" | "closed" | "full" | "gone" | "known" | "agreement";

/** Why somebody cannot apply: what stands in the way of all, or that she has done so. */
export type NotTakingWhy =
  { readonly why: "over" | "closed" | "full" | "gone" } | { readonly why: "known"; readonly ownLink: string };

/** What comes back where an application was not taken: all that was typed, and what is to be looked at. */
export interface ApplyAnswer {
  readonly typed: TypedApplication;
  readonly faults: SaidByField;
  /** Hard to believe, asked once: sent again as it is, it is taken. */
  readonly doubts: SaidByField;
  readonly refusal: Refusal | null;
  /** What went wrong otherwise. */
  readonly says: string | null;
  /** The agreement as it is now, where it is another than she read. */
  readonly agreement: AgreementShown | null;
  /** Of the application that she has made already, where she is signed in to its account. */
  readonly ownLink: string | null;
}

/** What stands in a field, "" where nothing does. */
export function typedText(typed: TypedApplication | undefined, field: string): string {
  return typed?.[field]?.[0] ?? "";
}

export const PREFERENCES = ["prefers.0", "prefers.1", "prefers.2"] as const;

/** The field of a body measurement. */
export function bodyField(measurementId: string): string {
  return `body.${measurementId}`;
}
