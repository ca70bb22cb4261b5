import "server-only";
import { revalidatePath } from "next/cache";
import { sentenceOf, type Failure } from "@/server/action";
import type { TesterAccess } from "./access";
import { testerAccess } from "./request-access";

/** Does something as a tester and draws their pages again; a known failure comes back as a sentence, others are thrown on. */
export async function forTester(
  testerId: string,
  run: (access: TesterAccess) => Promise<void>,
): Promise<Failure | undefined> {
  try {
    await run(await testerAccess(testerId));
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  revalidatePath(`/testing/${testerId}`, "layout");
  return undefined;
}
