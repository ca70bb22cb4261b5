"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { textSchema, type PatternDocument } from "@/engine/pattern";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callPlaces, currentCall } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer, sentenceOf, viewerAction, type Failure } from "@/server/action";
import { lastTexts, parseForm, readForm } from "@/server/read-form";
import { submissionKey } from "@/server/submission-key";
import { begunOpening } from "./begun-opening";
import { readOpening } from "./data";
import { editedOpening } from "./edited-data";
import { fieldNames } from "./field-names";
import { beginOpening, keepOpening, openCall, publishOpening, takeBackOpening } from "./mutations";
import { readTyped, type FieldFault } from "./read-typed";
import { typedOpeningSchema, type TypedOpening } from "./schema";
import { wholeOpening } from "./whole-opening";

/** Her browser's zone, where its scripts ran. */
const zoneSchema = z.string().max(100).default("");
const newCallSchema = z.object({ patternId: z.string(), formKey: z.uuid(), timeZone: zoneSchema });

/** Makes a call of a pattern with an opening that nobody sees yet, and leads to it. */
export const openNewCall = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, formKey, timeZone } = parseForm(newCallSchema, form);
    const access = await patternAccess(viewer, patternId, "editor");
    const { document: pattern } = await latestRevision(access);
    const title = `Test of ${pattern.name}`;
    const typed = begunOpening(pattern, { title, places: null, timeZone });
    const { callId } = await openCall(access, { title, typed, submissionKey: submissionKey(formKey, patternId) });
    redirect(`/calls/${callId}/opening`);
  },
);

const begunSchema = z.object({ callId: z.string(), timeZone: zoneSchema });

/** Begins an opening for a call that has none. */
export const beginCallOpening = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, timeZone } = parseForm(begunSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const [{ document: pattern }, { title }, places] = await Promise.all([
      latestRevision(access.pattern),
      currentCall(access),
      callPlaces(access),
    ]);
    await beginOpening(access, begunOpening(pattern, { title, places, timeZone }));
    revalidatePath(`/calls/${callId}/opening`);
    return undefined;
  },
);

/** What became of the opening's form. */
export interface OpeningAnswer {
  readonly status: "kept" | "published" | "taken back" | "faulty" | "late" | "failed";
  /** What was sent: it stays in the form whatever became of it. */
  readonly typed: TypedOpening;
  /** The version that the next save has read. */
  readonly version: number;
  readonly faults: readonly FieldFault[];
  /** What somebody else has saved meanwhile. */
  readonly theirs: TypedOpening | null;
  /** What failed. */
  readonly says: string | null;
}

const sentSchema = z.object({
  callId: z.string(),
  version: z.coerce.number().int().min(1),
  intent: z.enum(["keep", "publish", "take back"]).default("keep"),
});

interface Sent {
  readonly access: CallAccess;
  readonly pattern: PatternDocument;
  readonly version: number;
  readonly typed: TypedOpening;
}

/** Keeps, publishes or takes back an opening; what was typed comes back with what became of it. */
export async function saveOpening(_last: OpeningAnswer | undefined, form: FormData): Promise<OpeningAnswer> {
  const { callId, version, intent } = parseForm(sentSchema, form);
  const all = textsOf(form);
  try {
    const access = await callAccess(await actingViewer(), callId, "editor");
    const { document: pattern } = await latestRevision(access.pattern);
    const names = new Set(fieldNames(pattern));
    const typed = Object.fromEntries(Object.entries(all).filter(([name]) => names.has(name)));
    const sent = { access, pattern, version, typed };
    const answer = await (intent === "publish" ? publish(sent) : intent === "keep" ? keep(sent) : takeBack(sent));
    revalidatePath(`/calls/${callId}`, "layout");
    return answer;
  } catch (error) {
    return { status: "failed", typed: all, version, faults: [], theirs: null, says: sentenceOf(error) };
  }
}

/** Lines end alike however the form was sent, or the same text would not be the same. */
function textsOf(form: FormData): TypedOpening {
  const entries = Object.entries(lastTexts(readForm(form)));
  return Object.fromEntries(entries.map(([name, text]) => [name, text.replace(/\r\n?/g, "\n")]));
}

function answered({ typed, version }: Sent, answer: Partial<OpeningAnswer>): OpeningAnswer {
  return { status: "faulty", typed, version, faults: [], theirs: null, says: null, ...answer };
}

async function keep(sent: Sent): Promise<OpeningAnswer> {
  const { access, pattern, version, typed } = sent;
  if (!typedOpeningSchema.safeParse(typed).success) return answered(sent, { faults: unstorable(typed) });
  const { opening, faults } = readTyped(typed, pattern);
  const wrong = faults.filter(({ isMissing }) => !isMissing);
  const isTitled = opening.title !== "" && !wrong.some(({ field }) => field === "title");
  const saved = await keepOpening(access, { version, typed, title: isTitled ? opening.title : null });
  if (saved.status === "late") return await late(sent);
  return answered(sent, { status: "kept", version: saved.version, faults: wrong });
}

async function publish(sent: Sent): Promise<OpeningAnswer> {
  const { access, pattern, version, typed } = sent;
  const stands = await readOpening(access);
  const whole = wholeOpening(typed, { pattern, now: new Date(), stands: stands?.document ?? null });
  const refused = async (faults: readonly FieldFault[]) =>
    answered(sent, { faults, ...(stands === null ? await keptToo(sent) : {}) });
  if (!whole.ok) return await refused(whole.faults);
  const saved = await publishOpening(access, { version, opening: whole.opening });
  if (saved.status === "late") return await late(sent);
  if (saved.status === "refused") return await refused(saved.faults);
  return answered(sent, { status: "published", version: saved.version });
}

/** What cannot be published yet is kept all the same. */
async function keptToo(sent: Sent): Promise<Partial<OpeningAnswer>> {
  const { status, version, theirs } = await keep(sent);
  return status === "late" ? { status, version, theirs } : { version };
}

async function takeBack(sent: Sent): Promise<OpeningAnswer> {
  const { access, version, typed } = sent;
  if (!typedOpeningSchema.safeParse(typed).success) return answered(sent, { faults: unstorable(typed) });
  const taken = await takeBackOpening(access, { version, typed });
  if (taken.status === "late") return await late(sent);
  if (taken.status === "saved") return answered(sent, { status: "taken back", version: taken.version });
  const says =
    "Somebody has applied or was invited already, so it stays published. You can still change it, or close the call.";
  return answered(sent, { status: "failed", says });
}

async function late(sent: Sent): Promise<OpeningAnswer> {
  const theirs = await editedOpening(sent.access);
  return answered(sent, { status: "late", version: theirs?.version ?? sent.version, theirs: theirs?.typed ?? null });
}

function unstorable(typed: TypedOpening): FieldFault[] {
  return Object.entries(typed)
    .filter(([, text]) => !textSchema.safeParse(text).success)
    .map(([field]) => ({
      field,
      says: "This is too long, or holds a character that cannot be stored.",
      isMissing: false,
    }));
}
