"use server";

import { revalidatePath } from "next/cache";
import type { ReportContext } from "@/engine/reporting";
import { testerAccess } from "@/features/testers/access";
import { sentenceOf } from "@/server/action";
import { AppError } from "@/server/errors";
import { readForm, textOf } from "@/server/read-form";
import { readDraft } from "./data";
import { keepFields, type KeptFields } from "./draft-mutations";
import { changesOfForm, changesSchema } from "./draft-schema";
import { fieldWords } from "./field-words";
import type { AskedField, KeepAnswer } from "./keep-answer";
import type { FieldChange } from "./merge-fields";

/** Keeps what a device of a tester's has not sent yet. */
export async function keepReportFields(testerId: string, changes: readonly FieldChange[]): Promise<KeepAnswer> {
  return await keep(testerId, () => changesSchema.parse(changes));
}

/** The same for a form that is sent without JavaScript. */
export async function saveReportForm(_last: unknown, form: FormData): Promise<KeepAnswer> {
  const sent = readForm(form);
  return await keep(textOf(sent, "testerId") ?? "", () => changesOfForm(sent));
}

async function keep(testerId: string, read: () => readonly FieldChange[]): Promise<KeepAnswer> {
  let changes: readonly FieldChange[] = [];
  try {
    changes = read();
    const access = await testerAccess(testerId);
    const kept = await keepFields(access, changes);
    revalidatePath(`/testing/${testerId}`, "layout");
    const isWhole = kept.clashes.length + kept.refused.length === 0;
    return { status: "kept", asked: isWhole ? [] : askedFields(kept, (await readDraft(access)).context) };
  } catch (error) {
    const isOver = error instanceof AppError && error.code !== "database-away";
    return { status: "failed", says: sentenceOf(error), isOver, asked: changes.map(unsaved) };
  }
}

function unsaved({ field, becomes }: FieldChange): AskedField {
  const says = `You typed ${quoted(becomes ?? "")}; it is not kept.`;
  return { field, label: fieldWords(field), there: null, here: becomes, says };
}

function askedFields({ clashes, refused }: KeptFields, context: ReportContext): AskedField[] {
  return [
    ...clashes.map(({ field, there, here }) => ({
      ...{ field, there, here, label: fieldWords(field, context) },
      says: `On another device you typed ${quoted(there)}; here ${quoted(here ?? "")}.`,
    })),
    ...refused.map(({ field, message }) => ({
      field,
      label: fieldWords(field, context),
      there: null,
      here: null,
      says: message,
    })),
  ];
}

function quoted(text: string): string {
  return text === "" ? "nothing" : `“${text}”`;
}
