"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { sentenceOf, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { testerAccess } from "./request-access";
import { forgetTester } from "./forget-mutations";

/** Deletes a tester's contact, body measurements and words. */
export async function forget(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId } = parseForm(z.object({ testerId: z.string() }), form);
  try {
    await forgetTester(await testerAccess(testerId));
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  redirect("/testing/deleted");
}
