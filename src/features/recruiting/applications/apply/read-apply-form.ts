import { z } from "zod";
import type { LengthUnit } from "@/engine/units";
import { emailSchema } from "@/features/accounts/schema";
import {
  bodyField,
  PREFERENCES,
  typedText,
  type AskedMeasurement,
  type AskedOfApplicants,
  type MessagesByField,
  type TypedApplication,
} from "./apply-answer";
import { EXAMPLE_LENGTH, readBodyLength } from "./read-body-length";
import { applicationSchema, WEARERS, type ApplicationDocument } from "../schema";

/** A complete application. */
export interface ReadApplication {
  readonly name: string;
  readonly email: string;
  readonly document: Omit<ApplicationDocument, "timeZone">;
  /** Body measurement -> cm. */
  readonly measurements: Readonly<Record<string, number>>;
  /** The same as typed. */
  readonly typed: Readonly<Record<string, string>>;
}

export type ReadForm =
  | { readonly ok: true; readonly application: ReadApplication }
  | { readonly ok: false; readonly faults: MessagesByField; readonly doubts: MessagesByField };

const MAX_LINE_LENGTH = 1_000;
const MAX_TEXT_LENGTH = 5_000;
const AGAIN = "If your number is correct, just send the form again: you will not be asked twice.";

/**
 * Reads an application form.
 *
 * @param asked what the call asks; the fields depend on it.
 * @returns every fault by its field; an unusual measurement is a doubt, unless it was questioned before.
 */
export function readApplyForm(typed: TypedApplication, asked: AskedOfApplicants): ReadForm {
  const messages: Messages = { faults: {}, doubts: {} };
  const unit = choice(messages, typed, "unit", UNIT) ?? "cm";
  const body = readBody(messages, { typed, asked: asked.body, unit });
  const sizes = readSizes(messages, typed, asked);
  const application = {
    name: line(messages, typed, "name", NAME),
    email: email(messages, typed),
    ...body,
    document: {
      ...sizes,
      unit,
      ...readWearer(messages, typed),
      yarn: text(messages, typed, "yarn"),
      tool: line(messages, typed, "tool"),
      terms: choice(messages, typed, "terms", TERMS) ?? "us",
      experience: choice(messages, typed, "experience", EXPERIENCE) ?? "first",
      handle: line(messages, typed, "handle"),
      pastWork: text(messages, typed, "pastWork"),
    },
  };
  mustBeTicked(messages, typed, "agrees", "To apply, read the agreement and tick this box.");
  mustBeTicked(messages, typed, "adult", `You must be ${asked.minimumAge} or over to apply. Tick this box if you are.`);
  const isWhole = Object.keys(messages.faults).length + Object.keys(messages.doubts).length === 0;
  return isWhole ? { ok: true, application } : { ok: false, ...messages };
}

interface Messages {
  readonly faults: Record<string, string[]>;
  readonly doubts: Record<string, string[]>;
}

const { unit: UNIT_SCHEMA, terms: TERMS_SCHEMA, experience: EXPERIENCE_SCHEMA } = applicationSchema.shape;
const UNIT = { schema: UNIT_SCHEMA, missing: "Choose centimetres or inches." };
const TERMS = { schema: TERMS_SCHEMA, missing: "Choose US or UK." };
const EXPERIENCE = { schema: EXPERIENCE_SCHEMA, missing: "Choose the sentence that fits you best." };
const WEARER = {
  schema: z.enum(WEARERS),
  missing: "Choose who wears it. If they, or their parent or guardian, have not agreed yet, ask them first.",
};
const NAME = "Enter the name the designer should call you, such as Ann.";

function line(messages: Messages, typed: TypedApplication, field: string, missing?: string): string {
  return shortText(messages, typed, { field, max: MAX_LINE_LENGTH, missing });
}

function text(messages: Messages, typed: TypedApplication, field: string): string {
  return shortText(messages, typed, { field, max: MAX_TEXT_LENGTH });
}

function shortText(messages: Messages, typed: TypedApplication, { field, max, missing }: TextField): string {
  const value = typedText(typed, field).trim();
  if (value === "" && missing !== undefined) messages.faults[field] = [missing];
  if (value.length > max)
    messages.faults[field] = [
      `This has ${value.length.toLocaleString("en-GB")} characters; the limit is ${max.toLocaleString("en-GB")}.`,
    ];
  if (!value.isWellFormed() || value.includes("\u0000"))
    messages.faults[field] = ["This contains a character that cannot be stored. Type it again instead of pasting it."];
  return value;
}

interface TextField {
  readonly field: string;
  readonly max: number;
  readonly missing?: string;
}

function email(messages: Messages, typed: TypedApplication): string {
  const parsed = emailSchema.safeParse(typedText(typed, "email"));
  if (parsed.success) return parsed.data;
  messages.faults.email = [
    typedText(typed, "email").trim() === ""
      ? "Enter your e-mail address, such as ann@example.org."
      : firstOf(parsed.error),
  ];
  return "";
}

function firstOf(error: z.ZodError): string {
  return error.issues[0]?.message ?? "";
}

function choice<Value>(
  messages: Messages,
  typed: TypedApplication,
  field: string,
  { schema, missing }: { readonly schema: z.ZodType<Value>; readonly missing: string },
): Value | undefined {
  const parsed = schema.safeParse(typedText(typed, field));
  if (!parsed.success) messages.faults[field] = [missing];
  return parsed.data;
}

function mustBeTicked(messages: Messages, typed: TypedApplication, field: string, missing: string): void {
  if (typedText(typed, field) === "") messages.faults[field] = [missing];
}

interface BodyFields {
  readonly typed: TypedApplication;
  readonly asked: readonly AskedMeasurement[];
  readonly unit: LengthUnit;
}

function readBody(
  messages: Messages,
  { typed, asked, unit }: BodyFields,
): Pick<ReadApplication, "measurements" | "typed"> {
  const measurements: Record<string, number> = {};
  const texts: Record<string, string> = {};
  const askedBefore = new Set(typed.asked ?? []);
  for (const measurement of asked) {
    const field = bodyField(measurement.id);
    const written = typedText(typed, field).trim();
    if (written === "") {
      if (measurement.decides)
        messages.faults[field] = [
          `This measurement decides the size, so it is required. Enter a length such as ${EXAMPLE_LENGTH[unit]}.`,
        ];
      continue;
    }
    const length = readBodyLength(written, unit, measurement);
    if (!length.ok) {
      messages.faults[field] = [length.fault];
      continue;
    }
    if (length.doubt !== null && !askedBefore.has(measurement.id))
      messages.doubts[field] = [`${length.doubt} ${AGAIN}`];
    measurements[measurement.id] = length.cm;
    texts[measurement.id] = written;
  }
  return { measurements, typed: texts };
}

/** Whoever measures somebody else says that the person agrees, or a child's parent or guardian. */
function readWearer(messages: Messages, typed: TypedApplication): Pick<ApplicationDocument, "forAnother" | "wearer"> {
  if (typedText(typed, "forAnother") === "") return { forAnother: false };
  const wearer = choice(messages, typed, "wearer", WEARER);
  return { forAnother: true, ...(wearer && { wearer }) };
}

function readSizes(
  messages: Messages,
  typed: TypedApplication,
  { sizes }: AskedOfApplicants,
): Pick<ApplicationDocument, "accepts" | "prefers"> {
  const offered = new Map(sizes.map(({ id, label }) => [id, label]));
  const ticked = new Set((typed.accepts ?? []).filter((id) => offered.has(id)));
  // In the pattern's order, whatever order a browser sends.
  const accepts = ticked.size === 0 ? null : sizes.flatMap(({ id }) => (ticked.has(id) ? [id] : []));
  const prefers: string[] = [];
  for (const field of PREFERENCES) {
    const sizeId = typedText(typed, field);
    const label = offered.get(sizeId);
    if (label === undefined) continue;
    if (prefers.includes(sizeId)) messages.faults[field] = [`You chose ${label} twice. Choose another size, or none.`];
    else if (accepts !== null && !ticked.has(sizeId))
      messages.faults[field] = [`You chose ${label}, but it is not ticked above. Tick it too, or choose another size.`];
    prefers.push(sizeId);
  }
  return { accepts, prefers };
}
