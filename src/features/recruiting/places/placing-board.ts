import "server-only";
import { ownValue } from "@/engine/pattern";
import { bodyRuler, mostTesters, placeApplicants, type PlacedApplicants } from "@/engine/places";
import {
  countConsidered,
  fitMeasurements,
  placesLeft,
  placingQuestion,
  type PlacingQuestion,
} from "./placing-question";
import type { Applicant, PlacedTester, PlacingRows } from "./data";
import { freePlaces } from "./free-places";
import { answeredSizes, placedNow, placingName, usualConsidering, type Placed } from "./placing";
import { crowdOf, isDrawn, MANY } from "./placing-crowd";
import type { Answer, Considering, PersonAnswer, StoredBoard, StoredSide, StoredSize } from "./stored-board";
import { takesPlaceNow, testerState } from "./tester-state";

/** Of further people who would move, or whose measurements are unknown, only the number is stored. */
const MOST_TOLD = 6;
const MOST_WITHOUT_BODY = 10;

/** A person on the board, at their position. */
interface BoardRow {
  /** Null while they wait. */
  readonly size: string | null;
  readonly application: string | null;
  readonly tester: string | null;
  /** Null for testers, who are never moved. */
  readonly answer: PersonAnswer | null;
}

export interface CalculatedPlacing {
  readonly board: StoredBoard;
  /** By position. */
  readonly people: readonly BoardRow[];
  /** When the next unanswered invitation ends. */
  readonly validUntil: Date | null;
}

/** The current placing, and what assigning sizes again would change. */
export function placingBoard(rows: PlacingRows, now: Date): CalculatedPlacing {
  const placed = placedNow(rows);
  const isSize = new Set(rows.pattern.sizes.map(({ id }) => id));
  const testers = rows.testers.filter((tester) => isSize.has(tester.size) && takesPlaceNow(tester, now));
  const yes = solvedSide(rows, { considering: "yes", placed, now });
  const maybe = solvedSide(rows, { considering: "maybe", placed, now, before: yes });
  const sizes = boardSizes(rows, { placed, testers, now });
  const waitsForYes = new Set(yes.waiting);
  const waiting = [...yes.waiting, ...maybe.waiting.filter((applicant) => !waitsForYes.has(applicant))];
  const row = ({ applicationId, code, record }: Applicant, size: string | null): BoardRow => ({
    ...{ size, application: applicationId, tester: null },
    answer: { record, yes: yes.answers.get(code) ?? null, maybe: maybe.answers.get(code) ?? null },
  });
  const standing = sizes.flatMap(({ id }) => [
    ...testers.filter(({ size }) => size === id).map(({ testerId }) => testerRow(testerId, id)),
    ...placed.filter(({ size }) => size === id).map(({ applicant }) => row(applicant, id)),
  ]);
  const drawn = { rows, placed, testers, sizes, now };
  return {
    board: {
      ...{ fitBy: [...fitMeasurements(rows)], sizes, waitingFrom: standing.length },
      ...{ yes: storedSide(drawn, yes), maybe: storedSide(drawn, maybe), usual: usualConsidering(rows) },
      ...{ testers: rows.testers.length, applicants: rows.applicants.length, withdrawn: rows.withdrawn },
      words: countWords(rows),
      placing: placingName(placed),
    },
    people: [...standing, ...waiting.map((applicant) => row(applicant, null))],
    validUntil: nextEnd(rows.testers, now),
  };
}

function testerRow(tester: string, size: string): BoardRow {
  return { size, tester, application: null, answer: null };
}

/** The moment at which the next unanswered invitation ends, which frees its place. */
function nextEnd(testers: readonly PlacedTester[], now: Date): Date | null {
  const ends = testers.flatMap((tester) =>
    testerState(tester, now) === "invited" && tester.invitationExpiresAt !== null ? [tester.invitationExpiresAt] : [],
  );
  return ends.reduce<Date | null>((next, end) => (next === null || end < next ? end : next), null);
}

function boardSizes(
  rows: PlacingRows,
  { placed, testers, now }: Pick<Drawn, "placed" | "testers" | "now">,
): StoredSize[] {
  const { pattern } = rows;
  const ruler = bodyRuler({ pattern, fitBy: [...fitMeasurements(rows)] });
  const left = placesLeft(rows, now);
  let from = 0;
  return pattern.sizes.map(({ id, label }, index) => {
    const place = ownValue(rows.places, id);
    const { least, wanted } = place ?? { least: 0, wanted: 0 };
    const invited = testers.filter(({ size }) => size === id).length;
    const standing = placed.filter(({ size }) => size === id).length;
    const first = from;
    from += invited + standing;
    return {
      ...{ id, label, least, wanted, most: mostTesters(place), invited, placed: standing, from: first },
      marks: [...(ruler[index] ?? [])],
      over: Math.max(0, standing - mostTesters(ownValue(left, id))),
      missing: Math.max(0, least - invited - standing),
    };
  });
}

interface SolvedSide extends PlacingQuestion {
  readonly considering: Considering;
  readonly answer: PlacedApplicants;
  /** By the applicant's code. */
  readonly answers: ReadonlyMap<string, Answer>;
  readonly waiting: readonly Applicant[];
}

/** @param asked.before the side with fewer applicants considered; if the numbers are equal, its answer is reused. */
function solvedSide(
  rows: PlacingRows,
  asked: {
    readonly considering: Considering;
    readonly placed: readonly Placed[];
    readonly now: Date;
    readonly before?: SolvedSide;
  },
): SolvedSide {
  const { considering, placed, before } = asked;
  const question = placingQuestion(rows, asked);
  const isSame =
    before !== undefined && countConsidered(rows, before.considering) === countConsidered(rows, considering);
  const answer = isSame ? before.answer : placeApplicants(question.document, { endsFirst: true });
  const isAsked = new Set(question.document.applicants.map(({ id }) => id));
  const isPlaced = new Set(placed.map(({ applicant }) => applicant));
  return {
    ...{ ...question, considering, answer, answers: answersOf(answer) },
    waiting: rows.applicants.filter(
      (applicant) => applicant.decision !== "no" && isAsked.has(applicant.code) && !isPlaced.has(applicant),
    ),
  };
}

function answersOf(answer: PlacedApplicants): ReadonlyMap<string, Answer> {
  if (answer.status === "faults") return new Map();
  return new Map<string, Answer>([
    ...answer.placed.map(({ applicant, size, reason }) => [applicant, { size, reason }] as const),
    ...answer.waiting.map(({ applicant, reason }) => [applicant, { size: null, reason }] as const),
  ]);
}

interface Drawn {
  readonly rows: PlacingRows;
  readonly placed: readonly Placed[];
  /** Who takes a spot. */
  readonly testers: readonly PlacedTester[];
  readonly sizes: readonly StoredSize[];
  readonly now: Date;
}

/** What pages show for one choice of who is considered. */
function storedSide(drawn: Drawn, side: SolvedSide): StoredSide {
  const { rows, placed, now } = drawn;
  const { considering, answer, document, waiting, withoutBody } = side;
  return {
    considered: countConsidered(rows, considering),
    waiting: waiting.length,
    wouldMove: answer.status === "faults" ? null : wouldMove(rows, placed, answer),
    nearest: answer.status === "faults" ? [] : nearestPeople(drawn, answer),
    withoutBody: {
      many: withoutBody.length,
      first: withoutBody
        .slice(0, MOST_WITHOUT_BODY)
        .map(({ applicant: { applicationId }, missing }) => ({ application: applicationId, missing })),
    },
    free: freePlaces(rows, { document, placed, waiting, now }),
    crowds: crowds(drawn, waiting),
  };
}

function wouldMove(
  { applicants }: PlacingRows,
  placed: readonly Placed[],
  answer: Extract<PlacedApplicants, { status: "optimal" }>,
): StoredSide["wouldMove"] {
  const sizes = answeredSizes(applicants, answer);
  const stands = new Map(placed.map(({ applicant, size }) => [applicant.applicationId, size]));
  const moves = applicants.flatMap(({ applicationId: application, pin }) => {
    const [from, to] = [stands.get(application) ?? null, sizes.get(application) ?? null];
    return from === to || pin !== null ? [] : [{ application, from, to }];
  });
  return { many: moves.length, first: moves.slice(0, MOST_TOLD) };
}

/** The best candidates for each size with too few testers, unless assigning again would fill it. */
function nearestPeople(
  { rows, sizes }: Drawn,
  { short }: Extract<PlacedApplicants, { status: "optimal" }>,
): StoredSide["nearest"] {
  const ids = new Map(rows.applicants.map(({ code, applicationId }) => [code, applicationId]));
  return short
    .filter(({ size }) => sizes.some(({ id, missing }) => id === size && missing > 0))
    .map(({ size, nearest }) => ({
      size,
      people: nearest.flatMap(({ applicant, reason: takes }) => {
        const application = ids.get(applicant);
        return application === undefined ? [] : [{ application, takes }];
      }),
    }));
}

/** Bars of how many there are, where there are too many people to draw one by one. */
function crowds({ rows, placed, testers, sizes }: Drawn, waiting: readonly Applicant[]): StoredSide["crowds"] {
  const people = [
    ...testers.map(({ body, size }) => ({ body, size, mark: "invited" as const })),
    ...placed.map(({ applicant: { body, pin }, size }) => ({
      ...{ body, size },
      mark: pin === "size" ? ("locked" as const) : ("placed" as const),
    })),
    ...waiting.map(({ body }) => ({ body, size: null, mark: "waiting" as const })),
  ];
  if (people.length <= MANY) return null;
  return Object.fromEntries(
    fitMeasurements(rows).map((id, index) => {
      const known = people.flatMap(({ body, ...person }) => {
        const cm = ownValue(body ?? {}, id);
        return cm === undefined ? [] : [{ ...person, cm }];
      });
      return [
        id,
        crowdOf(
          known,
          sizes.filter(isDrawn).flatMap(({ marks }) => marks[index] ?? []),
        ),
      ];
    }),
  );
}

function countWords({ applicants }: PlacingRows): StoredBoard["words"] {
  const settled = applicants.filter(({ pin }) => pin !== "size");
  return {
    none: settled.filter(({ decision }) => decision === null).length,
    maybe: settled.filter(({ decision }) => decision === "maybe").length,
    no: applicants.filter(({ decision }) => decision === "no").length,
  };
}
