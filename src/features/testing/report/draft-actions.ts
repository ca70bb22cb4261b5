"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { keysOf, parseField, type ReportContext, type TypedReport } from "@/engine/reporting";
import { testerAccess } from "@/features/testing/home/request-access";
import { isStepPage } from "@/features/testing/home/tester-steps";
import { sentenceOf } from "@/server/action";
import { AppError } from "@/server/errors";
import { readForm, textOf } from "@/server/read-form";
import { THEN } from "./autosave/then";
import { readDraft } from "./data";
import { saveFields, type SavedFields } from "./draft-mutations";
import { changesOfForm, changesSchema } from "./draft-schema";
import { fieldWords } from "./field-copy";
import type { AskedField, SaveAnswer } from "./save-answer";
import type { FieldChange } from "./merge-fields";

/** Saves what a device of a tester's has not sent yet. */
export async function saveReportFields(testerId: string, changes: readonly FieldChange[]): Promise<SaveAnswer> {
  return await save(testerId, () => changesSchema.parse(changes));
}

/** The same for a form that is sent without JavaScript; one of its buttons goes on to the next step. */
export async function saveReportForm(_last: unknown, form: FormData): Promise<SaveAnswer> {
  const sent = readForm(form);
  const testerId = textOf(sent, "testerId") ?? "";
  const answer = await save(testerId, () => changesOfForm(sent));
  const next = textOf(sent, THEN);
  const isWhole = answer.status === "saved" && answer.asked.length === 0;
  if (isWhole && next !== undefined && isStepPage(next)) redirect(`/testing/${testerId}/${next}`);
  return answer;
}

interface StoredDraft {
  readonly context: ReportContext;
  readonly typed: TypedReport;
}

async function save(testerId: string, read: () => readonly FieldChange[]): Promise<SaveAnswer> {
  let changes: readonly FieldChange[] = [];
  try {
    changes = read();
    const access = await testerAccess(testerId);
    const saved = await saveFields(access, changes);
    revalidatePath(`/testing/${testerId}`, "layout");
    const isWhole = saved.clashes.length + saved.refused.length === 0;
    return { status: "saved", asked: isWhole ? [] : askedFields(saved, await readDraft(access)) };
  } catch (error) {
    const isFinal = error instanceof AppError && error.code !== "database-away";
    return { status: "failed", message: sentenceOf(error), isFinal, asked: changes.map(unsaved) };
  }
}

function unsaved({ field, becomes }: FieldChange): AskedField {
  const message = `You typed ${quoted(becomes ?? "")}; it is not saved.`;
  return { field, label: fieldWords(field), there: null, here: becomes, message };
}

function askedFields({ clashes, refused }: SavedFields, { context, typed }: StoredDraft): AskedField[] {
  return [
    ...clashes.map(({ field, there, here }) => ({
      ...{ field, there, here, label: fieldWords(field, context), isRemoved: isRemoved(field, typed) },
      message: `On another device you typed ${quoted(there)}, here ${quoted(here ?? "")}. Choose one.`,
    })),
    ...refused.map(({ field, message }) => ({
      field,
      label: fieldWords(field, context),
      there: null,
      here: null,
      message,
    })),
  ];
}

/** A field of a swatch, a yarn or a reading that is stored no more, and is not the first, which is always there. */
function isRemoved(name: string, typed: TypedReport): boolean {
  const field = parseField(name);
  if (field === null || !("key" in field) || field.key === "1") return false;
  return !keysOf(typed, field.kind === "reading" ? { reading: field.id } : field.kind).includes(field.key);
}

function quoted(text: string): string {
  return text === "" ? "nothing" : `“${text}”`;
}
