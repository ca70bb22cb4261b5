"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { Place } from "@/engine/instructions";
import { callAccess } from "@/features/calls/access";
import type { TesterAccess } from "@/features/testing/home/access";
import { testerAccess } from "@/features/testing/home/request-access";
import { actingViewer, sentenceOf, type Failure } from "@/server/action";
import { AppError } from "@/server/errors";
import { parseForm } from "@/server/read-form";
import { idempotencyKey } from "@/server/idempotency-key";
import { textOfTester } from "./data";
import { answerQuestions, askQuestion, takeBackQuestion, takeBackTrouble, reportTrouble } from "./mutations";
import { blockOfKey } from "./place-key";
import { sayAction } from "./say-action";
import { answerFormSchema, questionFormSchema, troubleFormSchema } from "./schema";

/** A tester asks about a passage of the instructions. */
export const ask = sayAction(
  { schema: questionFormSchema, fields: ["asks"] },
  async ({ testerId, place, formKey, asks }) => {
    const { access, ...at } = await placeOfTester(testerId, place);
    await askQuestion(access, { ...at, asks, idempotencyKey: idempotencyKey(formKey, JSON.stringify([at, asks])) });
    revalidatePath(`/testing/${testerId}`, "layout");
  },
);

/** A tester reports a passage where something went wrong. */
export const tell = sayAction(
  { schema: troubleFormSchema, fields: ["happened", "did"] },
  async ({ testerId, place, formKey, happened, did }) => {
    const { access, ...at } = await placeOfTester(testerId, place);
    const trouble = { happened, did };
    const key = idempotencyKey(formKey, JSON.stringify([at, trouble]));
    await reportTrouble(access, { ...at, ...trouble, idempotencyKey: key });
    revalidatePath(`/testing/${testerId}`, "layout");
  },
);

/** The designer or an editor answers questions for all testers. */
export const answer = sayAction({ schema: answerFormSchema, fields: ["answer"] }, async (given) => {
  const access = await callAccess(await actingViewer(), given.callId, "editor");
  await answerQuestions(access, { questionIds: given.questions, answer: given.answer, seenAt: given.seenAt });
  revalidatePath(`/calls/${given.callId}`, "layout");
});

const takeBackSchema = z.object({ testerId: z.string(), what: z.enum(["question", "trouble"]), id: z.uuid() });

/** A tester deletes their own question or trouble spot. */
export async function takeBack(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, what, id } = parseForm(takeBackSchema, form);
  try {
    const access = await testerAccess(testerId);
    await (what === "question" ? takeBackQuestion(access, id) : takeBackTrouble(access, id));
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  revalidatePath(`/testing/${testerId}`, "layout");
  return undefined;
}

async function placeOfTester(
  testerId: string,
  key: string,
): Promise<{ access: TesterAccess; revisionId: string; place: Place }> {
  const access = await testerAccess(testerId);
  const { revisionId, text } = await textOfTester(access);
  const block = blockOfKey(text, key);
  if (block === null) throw new AppError("not-found", GONE);
  return { access, revisionId, place: block.place };
}

const GONE = "This passage is no longer in your text. Reload the page and choose it again; what you typed is saved.";
