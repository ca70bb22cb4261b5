import "server-only";
import { cache } from "react";
import type { PatternDocument } from "@/engine/pattern";
import type { ReportInHand } from "@/features/testing/report/data";
import { foundOr404 } from "@/server/found-or-404";
import type { TesterAccess } from "./access";
import { asker } from "./request-access";
import type { TesterRead } from "./data";
import { testerSteps, type TesterStep } from "./tester-steps";
import { viewedTester } from "./viewed-data";

export interface LoadedTester {
  readonly access: TesterAccess;
  readonly tester: Omit<TesterRead, "size"> & {
    readonly size: { readonly id: string; readonly label: string };
    /** The revision that the tester works from. */
    readonly revision: { readonly revisionId: string; readonly number: number; readonly document: PatternDocument };
  };
  /** The report so far. */
  readonly inHand: ReportInHand;
  readonly steps: readonly TesterStep[];
}

/** What every page of a tester needs. Anybody else gets a 404. */
export const loadTester = cache((testerId: string): Promise<LoadedTester> => foundOr404(ownTester(testerId)));

async function ownTester(testerId: string): Promise<LoadedTester> {
  const { access, read, inHand } = await viewedTester(testerId, await asker(testerId));
  const { savedPattern: document } = inHand;
  const label = document.sizes.find(({ id }) => id === read.size)?.label ?? read.size;
  const revision = { revisionId: inHand.revisionId, number: read.revisionNumber, document };
  return {
    access,
    tester: { ...read, size: { id: read.size, label }, revision },
    inHand,
    steps: testerSteps(inHand),
  };
}
