import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { callPageHref } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { isMailOn } from "@/features/mail/mail-status";
import { CHANGEABLE_MAIL, whoAndWhen } from "@/features/testing/messages/changeable-kinds";
import { dropOwnWords } from "@/features/testing/messages/message-change-actions";
import { loadEditedMessage } from "@/features/testing/messages/message-change-loaders";
import { kindSchema } from "@/features/testing/messages/message-change-schema";
import { MessageForm } from "@/features/testing/messages/message-form";
import { OneButtonForm } from "@/ui/one-button-form";

type Props = PageProps<"/calls/[callId]/messages/[kind]">;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { callId, kind } = await params;
  const loaded = await loadCall(callId).catch(() => null);
  const known = kindSchema.safeParse(kind);
  const isShown = isMailOn() && loaded?.mayEdit === true && known.success;
  return { title: isShown ? CHANGEABLE_MAIL[known.data].name : { absolute: "Messages · Sizewright" } };
}

export default async function ChangedMessagePage({ params }: Props) {
  const { callId, kind: asked } = await params;
  const loaded = await loadCall(callId);
  const known = kindSchema.safeParse(asked);
  if (!isMailOn() || !loaded.mayEdit || !known.success) notFound();
  const kind = known.data;
  const mail = CHANGEABLE_MAIL[kind];
  const edited = await loadEditedMessage(loaded.access, kind);
  const { version, words } = edited.change;
  return (
    <CallPage loaded={loaded} page="messages" title={mail.name} intro={`${whoAndWhen(mail)} ${mail.whyAlways ?? ""}`}>
      <div className="max-w-3xl">
        <MessageForm
          {...{ callId, kind, ...edited }}
          listHref={callPageHref(callId, "messages")}
          storageKey={`kind-${loaded.viewer.accountId}-${callId}-${kind}`}
        />
        {words === null ? null : (
          <div className="mt-6">
            <OneButtonForm
              action={dropOwnWords}
              sends={{ callId, kind, version: String(version) }}
              button="Use Sizewright’s words again"
              waiting="Changing …"
            />
          </div>
        )}
      </div>
    </CallPage>
  );
}
