"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { sentenceOf, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { testerAccess } from "../home/request-access";
import { storeSizesShown } from "./sizes-shown-mutations";

const schema = z.object({ testerId: z.string(), sizesShown: z.enum(["all", "own"]) });

/** A tester chooses whether their text shows the numbers of all sizes. */
export async function showSizes(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, sizesShown } = parseForm(schema, form);
  try {
    await storeSizesShown(await testerAccess(testerId), sizesShown);
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  revalidatePath(`/testing/${testerId}/pattern`);
  return undefined;
}
