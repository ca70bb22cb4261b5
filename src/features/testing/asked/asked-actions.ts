"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer, sentenceOf, viewerAction, type Failure } from "@/server/action";
import { AppError } from "@/server/errors";
import { formAction } from "@/server/form-action";
import { idempotencyKey } from "@/server/idempotency-key";
import { lastTexts, parseForm, readForm } from "@/server/read-form";
import { testerAccess } from "../home/request-access";
import { answerAboutNumber, askAboutNumber, markAnswerSeen, withdrawQuestion } from "./asked-mutations";
import { measureWords } from "./asked-copy";
import { answerFormSchema, askFormSchema, askToMeasureSchema } from "./asked-schema";

/** The designer asks a tester about a number of their report. */
export const askAbout = formAction(askFormSchema, async ({ callId, testerId, number, formKey, asks }) => {
  const access = await callAccess(await actingViewer(), callId, "editor");
  const content = JSON.stringify([testerId, number, asks]);
  await askAboutNumber(access, { testerId, number, asks, idempotencyKey: idempotencyKey(formKey, content) });
  revalidatePath(`/calls/${callId}`, "layout");
  return undefined;
});

/** The designer asks a tester, in ready words, to measure something again, or what their report leaves out. */
export const askToMeasure = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, testerId, measurement, what, formKey } = parseForm(askToMeasureSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const { document } = await latestRevision(access.pattern);
    const label = document.measurements.find(({ id }) => id === measurement)?.label;
    if (label === undefined) throw new AppError("not-found");
    const key = idempotencyKey(formKey, JSON.stringify([testerId, measurement, what]));
    const asks = measureWords(what, label);
    await askAboutNumber(access, { testerId, number: { measurement }, asks, idempotencyKey: key });
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);

const questionSchema = z.object({ callId: z.string(), questionId: z.uuid() });

function questionAction(run: (access: CallAccess, questionId: string) => Promise<void>) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, questionId } = parseForm(questionSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    revalidatePath(`/calls/${callId}`, "layout");
    await run(access, questionId);
    return undefined;
  });
}

/** The designer has read an answer. */
export const seeAnswer = questionAction(markAnswerSeen);

/** The designer withdraws a question that nobody has answered. */
export const withdrawAsked = questionAction(withdrawQuestion);

/** The question whose answer could not be saved, and why. */
export interface FailedAnswer extends Failure {
  readonly questionId: string;
}

/** A tester answers that a number is right as it is. */
export async function answerAbout(_last: FailedAnswer | undefined, form: FormData): Promise<FailedAnswer | undefined> {
  const sent = lastTexts(readForm(form));
  const parsed = answerFormSchema.safeParse(sent);
  const questionId = sent.questionId ?? "";
  if (!parsed.success) return { status: "failed", questionId, says: parsed.error.issues[0]?.message ?? "" };
  try {
    await answerAboutNumber(await testerAccess(parsed.data.testerId), parsed.data);
  } catch (error) {
    return { status: "failed", questionId, says: sentenceOf(error) };
  }
  revalidatePath(`/testing/${parsed.data.testerId}`, "layout");
  return undefined;
}
