import { z } from "zod";
import { parseLength, type LengthUnit } from "@/engine/units";
import { emailSchema } from "@/features/accounts/schema";
import {
  bodyField,
  PREFERENCES,
  typedText,
  type AskedMeasurement,
  type AskedOfApplicants,
  type SaidByField,
  type TypedApplication,
} from "./apply-form";
import { bodyDoubt } from "./body-doubt";
import { applicationSchema, type ApplicationDocument } from "./schema";

/** An application that is whole. */
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
  | { readonly ok: false; readonly faults: SaidByField; readonly doubts: SaidByField };

const MOST_LINE = 1_000;
const MOST_TEXT = 5_000;
const MOST_BODY_CM = 1_000;

/**
 * Reads what an applicant sent.
 *
 * @param asked what the call asks, for the fields hang on it.
 * @returns every fault by its field; a measurement that is hard to believe is a doubt, unless she was asked already.
 */
export function readApplyForm(typed: TypedApplication, asked: AskedOfApplicants): ReadForm {
  const said: Said = { faults: {}, doubts: {} };
  const unit = choice(said, typed, "unit", UNIT) ?? "cm";
  const body = readBody(said, { typed, asked: asked.body, unit });
  const sizes = readSizes(said, typed, asked);
  const application = {
    name: line(said, typed, "name", NAME),
    email: email(said, typed),
    ...body,
    document: {
      ...sizes,
      unit,
      forAnother: typedText(typed, "forAnother") !== "",
      yarn: text(said, typed, "yarn"),
      tool: line(said, typed, "tool"),
      terms: choice(said, typed, "terms", TERMS) ?? "us",
      experience: choice(said, typed, "experience", EXPERIENCE) ?? "first",
      handle: line(said, typed, "handle"),
      pastWork: text(said, typed, "pastWork"),
    },
  };
  mustBeTicked(said, typed, "agrees", "Nobody can test without the agreement: tick this if you agree to it.");
  mustBeTicked(said, typed, "adult", "Only people who are 18 or over can apply: tick this if you are.");
  const isWhole = Object.keys(said.faults).length + Object.keys(said.doubts).length === 0;
  return isWhole ? { ok: true, application } : { ok: false, ...said };
}

interface Said {
  readonly faults: Record<string, string[]>;
  readonly doubts: Record<string, string[]>;
}

const { unit: UNIT_SCHEMA, terms: TERMS_SCHEMA, experience: EXPERIENCE_SCHEMA } = applicationSchema.shape;
const UNIT = { schema: UNIT_SCHEMA, missing: "Choose centimetres or inches." };
const TERMS = { schema: TERMS_SCHEMA, missing: "Choose the stitch names that you read." };
const EXPERIENCE = { schema: EXPERIENCE_SCHEMA, missing: "Choose the sentence that comes nearest." };
const NAME = "Write the name that the designer should call you by.";

function line(said: Said, typed: TypedApplication, field: string, missing?: string): string {
  return shortText(said, typed, { field, most: MOST_LINE, missing });
}

function text(said: Said, typed: TypedApplication, field: string): string {
  return shortText(said, typed, { field, most: MOST_TEXT });
}

function shortText(said: Said, typed: TypedApplication, { field, most, missing }: TextField): string {
  const value = typedText(typed, field).trim();
  if (value === "" && missing !== undefined) said.faults[field] = [missing];
  if (value.length > most)
    said.faults[field] = [`Keep this under ${most.toLocaleString("en-GB")} characters; these are ${value.length}.`];
  if (!value.isWellFormed() || value.includes("\u0000"))
    said.faults[field] = ["This holds a character that cannot be stored. Type it anew."];
  return value;
}

interface TextField {
  readonly field: string;
  readonly most: number;
  readonly missing?: string;
}

function email(said: Said, typed: TypedApplication): string {
  const parsed = emailSchema.safeParse(typedText(typed, "email"));
  if (parsed.success) return parsed.data;
  said.faults.email = [typedText(typed, "email").trim() === "" ? "Write your e-mail address." : firstOf(parsed.error)];
  return "";
}

function firstOf(error: z.ZodError): string {
  return error.issues[0]?.message ?? "";
}

function choice<Value>(
  said: Said,
  typed: TypedApplication,
  field: string,
  { schema, missing }: { readonly schema: z.ZodType<Value>; readonly missing: string },
): Value | undefined {
  const parsed = schema.safeParse(typedText(typed, field));
  if (!parsed.success) said.faults[field] = [missing];
  return parsed.data;
}

function mustBeTicked(said: Said, typed: TypedApplication, field: string, missing: string): void {
  if (typedText(typed, field) === "") said.faults[field] = [missing];
}

interface BodyFields {
  readonly typed: TypedApplication;
  readonly asked: readonly AskedMeasurement[];
  readonly unit: LengthUnit;
}

function readBody(said: Said, { typed, asked, unit }: BodyFields): Pick<ReadApplication, "measurements" | "typed"> {
  const measurements: Record<string, number> = {};
  const kept: Record<string, string> = {};
  const askedBefore = new Set(typed.asked ?? []);
  for (const measurement of asked) {
    const field = bodyField(measurement.id);
    const written = typedText(typed, field).trim();
    if (written === "") {
      if (measurement.decides)
        said.faults[field] = ["This one decides the size: take it as described and write it here."];
      continue;
    }
    const length = parseLength(written, unit);
    if (!length.ok) {
      said.faults[field] = [length.message];
      continue;
    }
    if (length.cm <= 0 || length.cm > MOST_BODY_CM) {
      said.faults[field] = ["Write a length above 0 and under 10 m."];
      continue;
    }
    const doubt = askedBefore.has(measurement.id) ? null : bodyDoubt(length.cm, length.unit, measurement);
    if (doubt !== null) said.doubts[field] = [doubt];
    measurements[measurement.id] = length.cm;
    kept[measurement.id] = written;
  }
  return { measurements, typed: kept };
}

function readSizes(
  said: Said,
  typed: TypedApplication,
  { sizes }: AskedOfApplicants,
): Pick<ApplicationDocument, "accepts" | "prefers"> {
  const offered = new Map(sizes.map(({ id, label }) => [id, label]));
  const ticked = new Set((typed.accepts ?? []).filter((id) => offered.has(id)));
  // In the pattern's order, whatever order a browser sends.
  const accepts = ticked.size === 0 ? null : sizes.flatMap(({ id }) => (ticked.has(id) ? [id] : []));
  const prefers: string[] = [];
  for (const field of PREFERENCES) {
    const wish = typedText(typed, field);
    const label = offered.get(wish);
    if (label === undefined) continue;
    if (prefers.includes(wish)) said.faults[field] = [`You chose ${label} twice. Choose another, or none.`];
    else if (accepts !== null && !ticked.has(wish))
      said.faults[field] = [`You would like ${label}, but it is not ticked above. Tick it too, or choose another.`];
    prefers.push(wish);
  }
  return { accepts, prefers };
}
