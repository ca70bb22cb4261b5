import { own } from "../pattern";
import { parseLength, type LengthUnit } from "../units";
import type { EditField } from "./edit-fields";

/** Texts as typed, by the path of their field; beside them `unit` and the answers to questions, `meant.<path>`. */
export type TypedEdits = Readonly<Record<string, string>>;

const UNIT_KEY = "unit";
const MEANT = "meant.";

/** The unit that lengths without one were typed in: the draft's own, so that it means the same to everybody. */
export function unitOfEdits(typed: TypedEdits, otherwise: LengthUnit): LengthUnit {
  const unit = own(typed, UNIT_KEY);
  return unit === "cm" || unit === "in" ? unit : otherwise;
}

/** True for what a draft keeps beside the texts. */
export function isBesideTexts(path: string): boolean {
  return path === UNIT_KEY || path.startsWith(MEANT);
}

/** True where she has said of this very text that it is meant. */
export function isMeant(typed: TypedEdits, path: string): boolean {
  return own(typed, MEANT + path) !== undefined && own(typed, MEANT + path) === own(typed, path);
}

/** The edits with the answer that the text under a path is meant, or is not. */
export function answerMeant(typed: TypedEdits, path: string, meant: boolean): TypedEdits {
  const { [MEANT + path]: _answer, ...rest } = typed;
  const text = own(typed, path);
  return meant && text !== undefined ? { ...rest, [MEANT + path]: text } : rest;
}

/** The edits with another text under a path; without it where the text is undefined. */
export function withText(typed: TypedEdits, path: string, text: string | undefined, unit: LengthUnit): TypedEdits {
  const { [path]: _text, [MEANT + path]: _answer, ...rest } = typed;
  const edits = text === undefined ? rest : { ...rest, [path]: text };
  if (Object.keys(edits).every(isBesideTexts)) return {};
  return { ...edits, [UNIT_KEY]: unitOfEdits(typed, unit) };
}

/**
 * The same edits in the unit of other edits: a length that was typed without a unit gets its own written behind it.
 *
 * @param fields of the pattern; counts have no unit.
 */
export function inUnitOf(
  typed: TypedEdits,
  { fields, unit, from }: { fields: readonly EditField[]; unit: LengthUnit; from: LengthUnit },
): TypedEdits {
  const typedIn = unitOfEdits(typed, from);
  if (typedIn === unit) return typed;
  const lengths = new Set(fields.filter(({ kind }) => kind !== "count").map(({ path }) => path));
  const entries = Object.entries(typed).map(([path, text]) => [
    path,
    lengths.has(path) && !namesUnit(text) ? `${text} ${typedIn}` : text,
  ]);
  return { ...Object.fromEntries(entries), [UNIT_KEY]: unit };
}

function namesUnit(text: string): boolean {
  const asCm = parseLength(text, "cm");
  const asInches = parseLength(text, "in");
  return !asCm.ok || !asInches.ok || asCm.unit === asInches.unit;
}
