import "server-only";
import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";

/** Names one tester of a call. */
export const oneTesterSchema = z.object({ callId: z.string(), testerId: z.uuid() });

/** A button about one tester, for editors. */
export function oneTesterAction(run: (access: CallAccess, testerId: string) => Promise<void>) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, testerId } = parseForm(oneTesterSchema, form);
    await run(await callAccess(viewer, callId, "editor"), testerId);
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  });
}
