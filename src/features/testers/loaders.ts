import "server-only";
import { cache } from "react";
import { foundOr404 } from "@/server/found-or-404";
import { testerAccess, type TesterAccess } from "./access";
import { readTester, type TesterRead } from "./data";
import { testerSteps, type TesterStep } from "./tester-steps";

export interface LoadedTester {
  readonly access: TesterAccess;
  readonly tester: TesterRead;
  readonly steps: readonly TesterStep[];
}

/** What every page of a tester needs. Whoever is not this tester is answered as if there were none. */
export const loadTester = cache((testerId: string): Promise<LoadedTester> => foundOr404(ownTester(testerId)));

async function ownTester(testerId: string): Promise<LoadedTester> {
  const access = await testerAccess(testerId);
  const tester = await readTester(access);
  return { access, tester, steps: testerSteps(tester) };
}
