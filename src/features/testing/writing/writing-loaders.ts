import "server-only";
import { z } from "zod";
import type { CallAccess } from "@/features/calls/access";
import { isMailOn } from "@/features/mail/mail-status";
import type { Revision } from "@/features/patterns/data";
import type { Viewer } from "@/server/viewer";
import type { ChoiceLink } from "@/ui/choice-links";
import { messageHref, progressQuerySchema } from "../progress/progress-query";
import { listedTesterIds } from "../progress/progress-list-data";
import { readPromised } from "../thanks/thanks-data";
import { readRecipients, readWrittenTo, type Recipient, type WrittenTo } from "./recipients-data";
import { MESSAGE_STARTS, START_NAMES, startWords, type MessageStart, type StartWords } from "./start-copy";

type Search = Readonly<Record<string, string | string[] | undefined>>;

export interface Writing {
  /** Everybody who was chosen. */
  readonly recipients: readonly Recipient[];
  /** Those to whom Sizewright sends it; null where it sends no mail. */
  readonly mailed: readonly WrittenTo[] | null;
  readonly start: StartWords;
  /** Where what is typed is stored in the browser. */
  readonly storageKey: string;
  /** What the message can begin with. */
  readonly starts: readonly ChoiceLink[];
  /** Who signs what is copied. */
  readonly from: string;
}

const querySchema = z.object({
  testerId: z.preprocess(
    (value: unknown) => (Array.isArray(value) ? value : value === undefined ? [] : [value]),
    z.array(z.uuid()).catch([]),
  ),
  /** Everybody whom the list shows for its query, instead of those who are ticked. */
  to: z.literal("listed").optional().catch(undefined),
  start: z.enum(MESSAGE_STARTS).catch("ask"),
});

interface WritingCall {
  readonly access: CallAccess;
  readonly call: { readonly callId: string; readonly title: string };
  readonly revision: Revision;
  readonly viewer: Viewer;
}

/** A message to the testers whom the address names: by their ids, or by a query of the list. */
export async function loadWriting({ access, call, revision, viewer }: WritingCall, search: Search): Promise<Writing> {
  const { testerId, to, start } = querySchema.parse(search);
  const asked = { pattern: revision.document, query: progressQuerySchema.parse(search), now: new Date() };
  const testerIds = to === "listed" ? await listedTesterIds(access, asked) : testerId;
  const [recipients, mailed, promised] = await Promise.all([
    readRecipients(access, testerIds),
    isMailOn() ? readWrittenTo(access, testerIds) : null,
    readPromised(access),
  ]);
  return {
    ...{ recipients, mailed, from: viewer.name },
    start: startWords(start, { title: call.title, promised }),
    storageKey: `message-${viewer.accountId}-${call.callId}-${start}`,
    starts: MESSAGE_STARTS.map((each) => startLink(call.callId, { search, start: each, current: start })),
  };
}

interface Start {
  readonly search: Search;
  readonly start: MessageStart;
  readonly current: MessageStart;
}

/** The same message to the same people, begun otherwise. */
function startLink(callId: string, { search, start, current }: Start): ChoiceLink {
  const asked = new URLSearchParams();
  for (const name of ["testerId", "to", "needs", "size"]) {
    for (const value of [search[name] ?? []].flat()) asked.append(name, value);
  }
  asked.set("start", start);
  return { href: `${messageHref(callId)}?${asked}`, label: START_NAMES[start], current: start === current };
}
