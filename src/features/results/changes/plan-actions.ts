"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { canonicalJson, idSchema } from "@/engine/pattern";
import { callAccess } from "@/features/calls/access";
import { correctedNumbers, reasonSchema, typedSchema } from "@/features/patterns/schema";
import { viewerAction, type Failure } from "@/server/action";
import { AppError } from "@/server/errors";
import { lastTexts, parseForm, readForm } from "@/server/read-form";
import { idempotencyKey } from "@/server/idempotency-key";
import { chosenIn, readChosen } from "./chosen";
import { requestPlan, savePlan } from "./plan-mutations";

/** A form that was refused, with what was chosen in it. */
export interface PlanFailure extends Failure {
  readonly chosen?: readonly string[];
}

const planSchema = z.object({ callId: z.uuid(), baseNumber: z.coerce.number().int().min(1), key: z.uuid() });

/** Requests a plan for the chosen proposals, and redirects to the page that shows it. */
export const planChanges = viewerAction(
  async (viewer, _last: PlanFailure | undefined, form: FormData): Promise<PlanFailure> => {
    const { callId, baseNumber, key } = parseForm(planSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const chosen = chosenIn(form);
    const read = readChosen(chosen);
    if (!read.ok) return { status: "failed", says: read.says, chosen };
    const { take } = read;
    const { planId } = await requestPlan(access, {
      request: { kind: "proposals", take: [...take] },
      baseNumber,
      idempotencyKey: idempotencyKey(key, canonicalJson(take)),
    });
    redirect(`/calls/${callId}/changes/${planId}`);
  },
);

const correctionSchema = planSchema.extend({
  cell: z.string().transform((cell, context) => {
    const [size, measurement] = cell.split(".").map((id) => idSchema.safeParse(id).data);
    if (size !== undefined && measurement !== undefined) return { size, measurement };
    context.addIssue({ code: "custom", message: "no cell" });
    return z.NEVER;
  }),
  reason: z.string().max(1_000),
});

/** Requests a plan for numbers corrected by hand, and redirects to the page that shows it. */
export const planCorrection = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure> => {
    const sent = lastTexts(readForm(form));
    const { callId, baseNumber, key, cell, reason } = correctionSchema.parse(sent);
    const access = await callAccess(viewer, callId, "editor");
    const typed = typedSchema.parse(correctedNumbers(Object.entries(sent)));
    const request = { kind: "correction", ...cell, typed, unit: viewer.unit, reason } as const;
    const { planId } = await requestPlan(access, {
      ...{ request, baseNumber },
      idempotencyKey: idempotencyKey(key, canonicalJson(request)),
    });
    redirect(`/calls/${callId}/correct?plan=${planId}#changes`);
  },
);

const saveSchema = z.object({
  ...{ callId: z.uuid(), planId: z.uuid(), reason: z.string().optional() },
  tells: z.literal("on").optional(),
});

const SOMEBODY_SAVED =
  "Someone saved a new revision while you were looking at this. Nothing is lost: go back to “Causes and changes” to see what is left to change in it.";

/** Saves a plan's pattern as the next revision, and redirects to the differences from it. */
export const savePlannedRevision = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure> => {
    const { callId, planId, reason: typed, tells } = parseForm(saveSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const reason = reasonSchema.safeParse(typed);
    if (!reason.success)
      return failure(
        reason.error.issues[0]?.message ?? "The reason can’t be saved: it must have 1 to 1,000 characters.",
      );
    let number: number;
    try {
      ({ number } = await savePlan(access, { planId, reason: reason.data, tells: tells === "on" }));
    } catch (error) {
      if (error instanceof AppError && error.code === "changed-meanwhile") return failure(SOMEBODY_SAVED);
      throw error;
    }
    revalidatePath(`/calls/${callId}`, "layout");
    redirect(`/calls/${callId}/differences?saved=${number}`);
  },
);

function failure(says: string): Failure {
  return { status: "failed", says };
}
