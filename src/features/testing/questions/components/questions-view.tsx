import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import type { ProblemPhoto } from "@/features/testing/photos/problem-photo-data";
import { EmptyState } from "@/ui/empty-state";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { pagesOfPlace, type AskedPlaces, type TroubledPlaces } from "../place-notes-data";
import { questionsHref, type QuestionsQuery } from "../questions-query";
import { AskedPlace } from "./asked-place";
import { TroublePlaces } from "./trouble-places";

interface QuestionsViewProps {
  readonly asked: AskedPlaces;
  readonly troubled: TroubledPlaces;
  /** Of problems, by the testers of the shown trouble spots. */
  readonly photos: readonly ProblemPhoto[];
  readonly query: QuestionsQuery;
  readonly pattern: PatternDocument;
  readonly callId: string;
  readonly mayEdit: boolean;
}

/** Questions and trouble spots of the instructions, passage by passage; or everything about one passage. */
export function QuestionsView({ asked, troubled, photos, query, ...call }: QuestionsViewProps) {
  const { callId, pattern } = call;
  if (query.at !== undefined) return <OnePlace {...{ asked, troubled, photos, query, ...call }} />;
  return (
    <>
      <Questions {...{ asked, query, ...call }} />
      <TroublePlaces
        {...{ troubled, photos, pattern, callId }}
        hrefOf={(troubles) => questionsHref(callId, { ...query, troubles })}
      />
    </>
  );
}

/** Passages with waiting questions come first. */
function Questions({ asked, query, ...call }: Omit<QuestionsViewProps, "troubled" | "photos">) {
  const { callId, pattern } = call;
  const { places, waiting, page, pages } = asked;
  if (places.length === 0) return <NoQuestions hasText={(pattern.instructions ?? "").trim() !== ""} />;
  const isWaiting = ({ threads }: (typeof places)[number]) => threads.some(({ answer }) => answer === null);
  const [open, answered] = [places.filter(isWaiting), places.filter((place) => !isWaiting(place))];
  const list = (shown: typeof places) => (
    <ul className="grid grid-cols-1 gap-6">
      {shown.map((place) => (
        <li key={place.key}>
          <AskedPlace {...{ place, ...call }} allHref={questionsHref(callId, { at: place.key })} />
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <Section title={waiting === 0 ? "No open questions" : `Waiting for an answer: ${waiting}`}>
        {waiting === 0 ? <p className="text-soft">You have answered every question.</p> : null}
        {open.length > 0 ? list(open) : null}
        {waiting > 0 && open.length === 0 ? <p className="text-soft">They are on the pages before this one.</p> : null}
      </Section>
      {answered.length > 0 ? <Section title="Answered">{list(answered)}</Section> : null}
      {pages > 1 ? (
        <div className="mb-12">
          <Paging
            label="Pages of questions"
            {...{ page, pages }}
            hrefOf={(questions) => questionsHref(callId, { ...query, questions })}
          />
        </div>
      ) : null}
    </>
  );
}

/** Everything about one passage, page by page. */
function OnePlace({ asked, troubled, photos, query, ...call }: QuestionsViewProps) {
  const { callId, pattern } = call;
  const lists = [...asked.places.flatMap(({ threads }) => threads), ...troubled.places.map(({ troubles }) => troubles)];
  const pages = pagesOfPlace(lists);
  return (
    <>
      <p className="mb-6">
        <Link href={questionsHref(callId, {})} prefetch={false} className="text-link">
          All passages
        </Link>
      </p>
      {lists.length === 0 ? <p className="mb-12 text-soft">There are no questions or problems here any more.</p> : null}
      {asked.places.map((place) => (
        <Section key={place.key} title="Questions about this passage">
          <AskedPlace {...{ place, ...call }} allHref={null} />
        </Section>
      ))}
      {troubled.places.length > 0 ? <TroublePlaces {...{ troubled, photos, pattern, callId }} isOnePlace /> : null}
      <Paging
        label="Pages of this passage"
        page={Math.min(query.page, pages)}
        pages={pages}
        hrefOf={(page) => questionsHref(callId, { at: query.at, page })}
      />
    </>
  );
}

function NoQuestions({ hasText }: { readonly hasText: boolean }) {
  return (
    <div className="mb-12">
      <EmptyState title="No questions yet">
        <p>
          Testers can ask about any passage of the written instructions. Their questions appear here with that passage;
          you answer once, and all testers see the answer next to it.
        </p>
        {hasText ? null : (
          <p className="mt-2">The newest revision has no written instructions, so there is nothing to ask about yet.</p>
        )}
      </EmptyState>
    </div>
  );
}
