"use server";

import { randomUUID } from "node:crypto";
import { redirect } from "next/navigation";
import { z } from "zod";
import { publishedCall, type PublishedCall } from "../../listing/access";
import { readPublished } from "../../listing/data";
import { sentenceOf } from "@/server/action";
import { clientAddress } from "@/server/client-address";
import { AppError } from "@/server/errors";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { readForm } from "@/server/read-form";
import { idempotencyKey } from "@/server/idempotency-key";
import { isTimeZone } from "@/server/time-zone";
import { optionalViewer } from "@/server/viewer";
import { applicationLink, ownApplicationLink } from "../access";
import { typedText, type ApplyAnswer, type Refusal, type TypedApplication } from "./apply-answer";
import { askedOfApplicants } from "./asked-of-applicants";
import { RefusedError } from "../check-free";
import { storeApplication } from "../mutations";
import { readApplyForm, type ReadApplication } from "./read-apply-form";

/** Enough for many applicants in one house, too few for trying addresses one after another. */
const APPLICATIONS_BY_ADDRESS: Limit = { name: "application-address", tries: 30, withinSeconds: 60 * 60 };

/** Stores an application and redirects to its page; otherwise everything typed comes back with the errors. */
export async function apply(_last: ApplyAnswer | null, form: FormData): Promise<ApplyAnswer> {
  const typed = Object.fromEntries(readForm(form));
  const callId = typedText(typed, "callId");
  let applicationId: string;
  try {
    const answer = await tryToApply(callId, typed);
    if (typeof answer !== "string") return answer;
    applicationId = answer;
  } catch (error) {
    return error instanceof RefusedError
      ? await refusalAnswer(callId, typed, error.refusal)
      : { ...ANSWER, typed, message: sentenceOf(error) };
  }
  redirect(`/applications/${applicationLink(applicationId)}`);
}

/** @returns the application's id, or an answer with the errors. */
async function tryToApply(callId: string, typed: TypedApplication): Promise<string | ApplyAnswer> {
  const call = await publishedOrGone(callId);
  const read = readApplyForm(typed, askedOfApplicants(await readPublished(call)));
  if (!read.ok) return { ...ANSWER, ...read, typed: withAsked(typed, read.doubts) };
  await consumeAttempt(APPLICATIONS_BY_ADDRESS, await clientAddress());
  return await storeApplication(call, await newApplication(callId, typed, read.application));
}

async function newApplication(callId: string, typed: TypedApplication, application: ReadApplication) {
  const viewer = await optionalViewer();
  const zone = typedText(typed, "timeZone");
  const agreementVersion = Number(typedText(typed, "agreementVersion"));
  const document = { ...application.document, timeZone: isTimeZone(zone) ? zone : null };
  const whole = { ...application, document, agreementVersion, accountId: viewer?.accountId ?? null };
  const formKey = z.uuid().catch(randomUUID()).parse(typedText(typed, "formKey"));
  const key = idempotencyKey(formKey, JSON.stringify([callId, whole]));
  return { ...whole, idempotencyKey: key };
}

const ANSWER = {
  typed: {},
  faults: {},
  doubts: {},
  refusal: null,
  message: null,
  agreement: null,
  ownLink: null,
} as const;

/** A measurement is questioned only once. */
function withAsked(typed: TypedApplication, doubts: ApplyAnswer["doubts"]): TypedApplication {
  const asked = Object.keys(doubts).map((field) => field.slice("body.".length));
  return { ...typed, asked: [...(typed.asked ?? []), ...asked] };
}

async function publishedOrGone(callId: string): Promise<PublishedCall> {
  try {
    return await publishedCall(callId);
  } catch (error) {
    throw error instanceof AppError && error.code === "not-found" ? new RefusedError("gone") : error;
  }
}

/** The current reason: the call may have ended in the meantime. */
async function refusalAnswer(callId: string, typed: TypedApplication, refusal: Refusal): Promise<ApplyAnswer> {
  const answer = { ...ANSWER, typed, refusal };
  if (refusal === "known") {
    const viewer = await optionalViewer();
    return { ...answer, ownLink: viewer === null ? null : await ownApplicationLink(viewer, callId) };
  }
  if (refusal === "gone") return answer;
  try {
    const { taking, agreement } = await readPublished(await publishedCall(callId));
    // Their agreement was to the text they read.
    if (refusal === "agreement") return { ...answer, typed: { ...typed, agrees: [] }, agreement };
    return taking === "open" ? answer : { ...answer, refusal: taking };
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found") return { ...answer, refusal: "gone" };
    throw error;
  }
}
