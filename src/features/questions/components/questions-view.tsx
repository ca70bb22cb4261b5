import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import { EmptyState } from "@/ui/empty-state";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { pagesOfPlace, type AskedPlaces, type TroubledPlaces } from "../said-data";
import { saidHref, type SaidQuery } from "../said-query";
import { AskedPlace } from "./asked-place";
import { TroublePlaces } from "./trouble-places";

interface QuestionsViewProps {
  readonly asked: AskedPlaces;
  readonly troubled: TroubledPlaces;
  readonly query: SaidQuery;
  readonly pattern: PatternDocument;
  readonly callId: string;
  readonly mayEdit: boolean;
}

/** What testers ask and tell of the text, place by place; or all of it at one place. */
export function QuestionsView({ asked, troubled, query, ...call }: QuestionsViewProps) {
  const { callId, pattern } = call;
  if (query.at !== undefined) return <OnePlace {...{ asked, troubled, query, ...call }} />;
  return (
    <>
      <Questions {...{ asked, query, ...call }} />
      <TroublePlaces
        {...{ troubled, pattern, callId }}
        hrefOf={(troubles) => saidHref(callId, { ...query, troubles })}
      />
    </>
  );
}

/** First the places where somebody waits for an answer. */
function Questions({ asked, query, ...call }: Omit<QuestionsViewProps, "troubled">) {
  const { callId, pattern } = call;
  const { places, waiting, page, pages } = asked;
  if (places.length === 0) return <NoQuestions hasText={(pattern.instructions ?? "").trim() !== ""} />;
  const isWaiting = ({ threads }: (typeof places)[number]) => threads.some(({ answer }) => answer === null);
  const [open, answered] = [places.filter(isWaiting), places.filter((place) => !isWaiting(place))];
  const list = (shown: typeof places) => (
    <ul className="grid grid-cols-1 gap-6">
      {shown.map((place) => (
        <li key={place.key}>
          <AskedPlace {...{ place, ...call }} allHref={saidHref(callId, { at: place.key })} />
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <Section title={waiting === 0 ? "Nobody waits for an answer" : `Waiting for an answer: ${waiting}`}>
        {waiting === 0 ? <p className="text-soft">Every question is answered.</p> : null}
        {open.length > 0 ? list(open) : null}
        {waiting > 0 && open.length === 0 ? (
          <p className="text-soft">They stand on the pages before this one.</p>
        ) : null}
      </Section>
      {answered.length > 0 ? <Section title="Answered">{list(answered)}</Section> : null}
      {pages > 1 ? (
        <div className="mb-12">
          <Paging
            label="Pages of questions"
            {...{ page, pages }}
            hrefOf={(questions) => saidHref(callId, { ...query, questions })}
          />
        </div>
      ) : null}
    </>
  );
}

/** All that is said of one place, page by page. */
function OnePlace({ asked, troubled, query, ...call }: QuestionsViewProps) {
  const { callId, pattern } = call;
  const lists = [...asked.places.flatMap(({ threads }) => threads), ...troubled.places.map(({ troubles }) => troubles)];
  const pages = pagesOfPlace(lists);
  return (
    <>
      <p className="mb-6">
        <Link href={saidHref(callId, {})} prefetch={false} className="text-link">
          All places
        </Link>
      </p>
      {lists.length === 0 ? <p className="mb-12 text-soft">Nothing is said of this place any more.</p> : null}
      {asked.places.map((place) => (
        <Section key={place.key} title="Asked at this place">
          <AskedPlace {...{ place, ...call }} allHref={null} />
        </Section>
      ))}
      {troubled.places.length > 0 ? <TroublePlaces {...{ troubled, pattern, callId }} isOnePlace /> : null}
      <Paging
        label="Pages of this place"
        page={Math.min(query.page, pages)}
        pages={pages}
        hrefOf={(page) => saidHref(callId, { at: query.at, page })}
      />
    </>
  );
}

function NoQuestions({ hasText }: { readonly hasText: boolean }) {
  return (
    <div className="mb-12">
      <EmptyState title="No questions yet">
        <p>
          Testers ask at a place of the written instructions. Their questions stand here with the words that they ask
          about; you answer once, and all testers of this call read it at that place.
        </p>
        {hasText ? null : (
          <p className="mt-2">The newest revision has no written instructions, so there is no place to ask about.</p>
        )}
      </EmptyState>
    </div>
  );
}
