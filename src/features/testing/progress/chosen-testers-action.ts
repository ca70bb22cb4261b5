import "server-only";
import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { readForm, textOf, type FormTexts } from "@/server/read-form";

type Run = (access: CallAccess, testerIds: readonly string[], sent: FormTexts) => Promise<Failure | undefined>;

/** An editor's action on the testers who are ticked in a list of their call. */
export function chosenTestersAction(run: Run) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const access = await callAccess(viewer, z.string().parse(textOf(sent, "callId")), "editor");
    const testerIds = z.array(z.uuid()).parse(sent.get("testerId") ?? []);
    if (testerIds.length === 0)
      return { status: "failed", says: "Choose the testers first, by the box before their name." };
    const failed = await run(access, testerIds, sent);
    if (failed === undefined) revalidatePath(`/calls/${access.callId}`, "layout");
    return failed;
  });
}
