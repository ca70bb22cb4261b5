import "server-only";
import type { NumberChange } from "@/features/calls/correction-schema";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { revisionById } from "@/features/patterns/data";
import type { Connection } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { correctionContent } from "./correction-mail-copy";

interface PublishedCorrection {
  readonly revisionId: string;
  readonly text: string;
  readonly numbers: readonly NumberChange[];
  /** Ids; none stands for all sizes. */
  readonly sizes: readonly string[];
}

/** Tells the testers of its sizes of a correction, those who have finished too: it is not asked of them to do anything. */
export async function writeCorrection(
  connection: Connection,
  access: CallAccess,
  { revisionId, sizes, ...published }: PublishedCorrection,
): Promise<void> {
  const { counts } = (await revisionById(access.pattern, revisionId, connection)).document;
  await writeChangeable(connection, {
    kind: "correction-published",
    testers: {
      ...{ call: callEditScope(access), acceptedAt: { not: null }, stoppedAt: null },
      ...(sizes.length === 0 ? {} : { size: { in: [...sizes] } }),
    },
    content: (tester) => correctionContent(tester, { ...published, counts }),
  });
}
