import "server-only";
import { testerValues } from "@/features/recruiting/own-words/own-words-data";
import type { CallAccess } from "@/features/calls/access";
import { mailedTesters } from "@/features/recruiting/invitations/mailed-tester-data";
import { writeToMailedTesters } from "@/features/recruiting/invitations/tester-mail-mutations";
import { inTransaction } from "@/server/transaction";
import { fieldFaults, fillFields } from "@/features/recruiting/own-words/message-fields-computed";
import { chosenTesters } from "./recipients-data";
import type { WrittenMessage } from "./writing-schema";

/**
 * Writes a designer's own message to the testers of the call whom they chose and who have an address, each with their
 * fields filled in and the way to their test. The same sending again writes nothing more.
 *
 * @returns what is wrong with the subject or the text; then nothing is written.
 */
export async function writeToChosen(
  access: CallAccess,
  { testerIds, formKey, subject, text }: WrittenMessage,
): Promise<Readonly<Partial<Record<"subject" | "text", string>>>> {
  return await inTransaction(async (transaction) => {
    const testers = await mailedTesters(transaction, chosenTesters(access, testerIds));
    const recipients = testers.map(({ tester }) => ({ name: tester.name, values: testerValues(tester) }));
    const [subjectFault] = fieldFaults(subject, recipients);
    const [textFault] = fieldFaults(text, recipients);
    if (subjectFault !== undefined || textFault !== undefined)
      return { ...(subjectFault && { subject: subjectFault }), ...(textFault && { text: textFault }) };
    await writeToMailedTesters(transaction, testers, {
      kind: "designer-wrote",
      key: formKey,
      content: (tester) => {
        const filled = (typed: string) => fillFields(typed, testerValues(tester));
        return {
          subject: filled(subject),
          parts: [{ text: filled(text) }, { link: "Open your test", to: tester.ownLink }],
        };
      },
    });
    return {};
  });
}
