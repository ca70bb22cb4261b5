"use server";

import { parseField } from "@/engine/reporting";
import type { Failure } from "@/server/action";
import { lastTexts, parseForm, readForm } from "@/server/read-form";
import { forTester } from "../home/for-tester";
import { answerCorrection, confirmWorked } from "./answer-mutations";
import { answerSchema, confirmSchema } from "./answer-schema";
import { wholeNumber, WHOLE_NUMBERS } from "./whole-number";

/** A tester says how they deal with a correction. */
export async function answer(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, ...answered } = parseForm(answerSchema, form);
  return await forTester(testerId, (access) => answerCorrection(access, answered));
}

/** A tester confirms the counts that they worked. */
export async function confirm(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, correctionId } = parseForm(confirmSchema, form);
  const worked: Record<string, number> = {};
  for (const [name, text] of Object.entries(lastTexts(readForm(form)))) {
    const field = parseField(name);
    if (field?.kind !== "worked") continue;
    const number = wholeNumber(text);
    if (number === null) return { status: "failed", says: `Enter ${WHOLE_NUMBERS}` };
    worked[field.id] = number;
  }
  return await forTester(testerId, (access) => confirmWorked(access, { correctionId, worked }));
}
