"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { actingViewer, sentenceOf, viewerAction, type Failure } from "@/server/action";
import { clientAddress } from "@/server/client-address";
import { wholeAddress } from "@/server/whole-address";
import { parseForm } from "@/server/read-form";
import { patternAccess, type HelperRole } from "../access";
import { proveToken } from "./prove-token";
import { acceptInvitation, createInvitation, withdrawInvitation } from "./invitation-mutations";
import { helperRoleSchema, noteSchema } from "./invitation-schema";

/** The result of an invitation form. If refused, what was typed comes back. */
export type Invited =
  | {
      readonly status: "made";
      readonly link: string;
      readonly role: HelperRole;
      readonly note: string;
      readonly expiresAt: Date;
    }
  | { readonly status: "refused"; readonly says: string; readonly role: string; readonly note: string };

const formSchema = z.object({ patternId: z.string(), role: z.string().default(""), note: z.string().default("") });
const withdrawSchema = z.object({ patternId: z.string(), invitationId: z.uuid() });
const acceptSchema = z.object({ token: z.string() });
const invitationSchema = z.object({ role: helperRoleSchema, note: noteSchema });

/** A link for one helper, shown only once. */
export async function invite(_last: Invited | undefined, form: FormData): Promise<Invited> {
  const { patternId, ...typed } = parseForm(formSchema, form);
  try {
    const access = await patternAccess(await actingViewer(), patternId, "owner");
    const parsed = invitationSchema.safeParse(typed);
    if (!parsed.success)
      return { status: "refused", says: parsed.error.issues.map(({ message }) => message).join(" "), ...typed };
    const { token, expiresAt } = await createInvitation(access, parsed.data);
    revalidatePath(`/patterns/${patternId}/people`);
    const link = wholeAddress(`/invitations/${token}`);
    return { status: "made", link, expiresAt, ...parsed.data };
  } catch (error) {
    return { status: "refused", says: sentenceOf(error), ...typed };
  }
}

/** The owner withdraws an unused link. */
export const withdraw = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const asked = parseForm(withdrawSchema, form);
    await withdrawInvitation(await patternAccess(viewer, asked.patternId, "owner"), asked.invitationId);
    revalidatePath(`/patterns/${asked.patternId}/people`);
    return undefined;
  },
);

/** Accepts an invitation and redirects to its pattern; if that is impossible, the invitation's page says why. */
export const accept = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { token } = parseForm(acceptSchema, form);
    const access = await proveToken(token, await clientAddress());
    const patternId = await acceptInvitation(access, viewer);
    if (patternId !== null) redirect(`/patterns/${patternId}`);
    revalidatePath(`/invitations/${token}`);
    return undefined;
  },
);
