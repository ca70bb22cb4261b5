"use server";

import { z } from "zod";
import type { Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { forTester } from "../home/for-tester";
import { storeHabitConsent } from "./habit-mutations";

const consentSchema = z.object({ testerId: z.string(), allows: z.enum(["yes", "no"]) });

/** A tester says whether what this test shows of how they measure may be used in their later ones, or no more. */
export async function saveHabitConsent(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, allows } = parseForm(consentSchema, form);
  return await forTester(testerId, (access) => storeHabitConsent(access, allows === "yes"));
}
