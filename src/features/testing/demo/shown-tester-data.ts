import "server-only";
import { invitationLink } from "@/features/recruiting/invitations/access";
import { database } from "@/server/database";

/** The invented tester as whom the demo lets anybody look around, by their address there. */
const SHOWN_TESTER_ADDRESS = "marit@example.org";

/** The personal link of the demo's shown tester; null where they have finished with the test, or it is gone. */
export async function shownTesterLink(): Promise<string | null> {
  const tester = await database().tester.findFirst({
    where: {
      ...{ call: { status: "open", pattern: { isDemo: true } }, contact: { email: SHOWN_TESTER_ADDRESS } },
      ...{ acceptedAt: { not: null }, stoppedAt: null, accountId: null },
    },
    orderBy: { id: "asc" },
    select: { id: true, linkVersion: true },
  });
  return tester === null ? null : invitationLink({ testerId: tester.id, linkVersion: tester.linkVersion });
}
