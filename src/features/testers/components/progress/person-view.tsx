import { AskedFirst } from "@/ui/asked-first";
import { CopyField } from "@/ui/copy-field";
import { EmptyState } from "@/ui/empty-state";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import type { Milestone } from "../../data";
import { dayIn } from "../../due-words";
import { makeNewLink, withdrawInvitation } from "../../progress-actions";
import type { Progress } from "../../tester-status-data";
import { MILESTONE_WORDS } from "../milestone-words";
import { ExtendForm } from "./extend-form";
import { NoteForm } from "./note-form";
import { needWords, sinceWords, STATE_WORDS } from "./progress-words";

interface PersonViewProps {
  readonly callId: string;
  readonly progress: Progress;
  readonly milestones: readonly Milestone[];
  /** Her link, for who may invite; null where she has none. */
  readonly link: string | null;
  readonly unit: "cm" | "in";
  readonly mayEdit: boolean;
}

/** One tester as the designer sees her: where she is, what she said, notes, and her link. */
export function PersonView({ callId, progress, milestones, link, unit, mayEdit }: PersonViewProps) {
  const { row, state, needs } = progress;
  return (
    <>
      <Section title="Where she is">
        <p className="text-lg">
          {STATE_WORDS[state]} <span className="text-soft numbers">{sinceWords(progress)}</span>
        </p>
        <ul className="mt-2">
          {needs.map((need) => (
            <li key={need} className="font-semibold wrap-anywhere">
              <span aria-hidden="true" className="text-thread">
                ▲{" "}
              </span>
              {needWords(need, progress, unit)}
            </li>
          ))}
        </ul>
      </Section>
      <Section title="What she said">
        {milestones.length === 0 ? (
          <EmptyState title="Nothing yet">
            <p>Her word on how she gets on stands here.</p>
          </EmptyState>
        ) : (
          <ol className="grid gap-1.5">
            {milestones.map(({ word, note, at }) => (
              <li key={at.toISOString()} className="wrap-anywhere">
                <span className="text-soft numbers">{dayIn(at, "UTC")}</span>: {MILESTONE_WORDS[word]}
                {note ? (
                  <>
                    , “<bdi>{note}</bdi>”
                  </>
                ) : null}
              </li>
            ))}
          </ol>
        )}
      </Section>
      {mayEdit ? (
        <Section title="Your notes" intro="Seen by you and your helpers, never by her.">
          <NoteForm callId={callId} testerId={row.testerId} note={row.note} />
        </Section>
      ) : null}
      {mayEdit && link !== null ? <LinkSection {...{ callId, progress, link }} /> : null}
    </>
  );
}

function LinkSection({ callId, progress, link }: { callId: string; progress: Progress; link: string }) {
  const { row, state } = progress;
  const sends = { callId, testerId: row.testerId };
  const isAnswered = row.acceptedAt !== null;
  return (
    <Section title={isAnswered ? "Her link" : "Her invitation"} intro={linkIntro(progress)}>
      <CopyField id="tester-link" label="Link" text={link} button="Copy the link" />
      <div className="mt-4 grid gap-4">
        {isAnswered ? null : <ExtendForm {...sends} state={state} />}
        {state === "invited" ? (
          <AskedFirst question="Withdraw the invitation">
            <p>The link then says that it was withdrawn, and the place is free. You can invite her again.</p>
            <OneButtonForm
              action={withdrawInvitation}
              sends={sends}
              button="Withdraw it"
              waiting="Withdrawing …"
              look="main"
            />
          </AskedFirst>
        ) : null}
        <AskedFirst question="Make a new link">
          <p>
            The link above leads nowhere from then on, and browsers that it let in are let in no more: for one that went
            astray. Send her the new one.
          </p>
          <OneButtonForm action={makeNewLink} sends={sends} button="Make a new link" waiting="Making it …" />
        </AskedFirst>
      </div>
    </Section>
  );
}

function linkIntro({ row, state }: Progress): string {
  if (row.hasAccount) return "She comes in by signing in; the link leads her there.";
  if (row.acceptedAt !== null) return "Whoever has it comes in to her page, as long as she has set no password.";
  if (state === "invited" && row.endsAt !== null)
    return `It can be answered until ${dayIn(row.endsAt, "UTC")}. Send it as you like; nothing is sent from here.`;
  return "It cannot be answered any more, unless you invite her again.";
}
