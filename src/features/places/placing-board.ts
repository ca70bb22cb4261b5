import "server-only";
import { own, type ApplicantsDocument } from "@/engine/pattern";
import {
  fitInSize,
  type Applicant as EngineApplicant,
  type FitInSize,
  type PlacedApplicant,
  type PlacedApplicants,
  type ShortSize,
  type WaitingApplicant,
} from "@/engine/places";
import { choiceWords } from "./fit-words";
import { fitMeasurements, placesLeft, placingQuestion, type Considering } from "./applicants-document";
import type { Applicant, PlacedTester, PlacingRows } from "./data";
import { placedByEngine } from "./placed-by-engine";
import { answeredSizes, placedNow, type Placed } from "./placing";
import { PlaceWords } from "./reason-words";
import { takesPlaceNow, testerState, type TesterState } from "./tester-state";

/** Whether somebody stands in a size by the solver's word, by the designer's, or is past both. */
export type Standing = "placed" | "locked" | "waiting" | Extract<TesterState, "invited" | "accepted" | "brought in">;

/** A person on the ruler and in the table. */
export interface BoardPerson {
  readonly key: string;
  readonly name: string;
  readonly standing: Standing;
  /** Null where she waits. */
  readonly size: string | null;
  readonly body: Readonly<Record<string, number>>;
  /** Null where her body is not known where it decides the fit, or where she stands in no size. */
  readonly fit: FitInSize | null;
  /** Null of those whose wishes are not known. */
  readonly choice: string | null;
  readonly why: string;
  /** Null of testers: nothing moves them any more. */
  readonly applicant: Applicant | null;
}

export interface BoardSize {
  readonly id: string;
  readonly label: string;
  /** The body that it is made for, in the order of the document's `fitBy`. */
  readonly bodyCm: readonly number[];
  readonly least: number;
  readonly wanted: number;
  /** Testers first, then who would be invited. */
  readonly people: readonly BoardPerson[];
  readonly invited: number;
  /** More than its places. */
  readonly over: number;
  /** Fewer than its least. */
  readonly missing: number;
  /** Who comes nearest to a size that is short; null where it is not, or where solving again would fill it. */
  readonly nearest: readonly Nearest[] | null;
}

export interface Nearest {
  readonly name: string;
  readonly fit: FitInSize;
  /** What it would take, in sentences. */
  readonly takes: string;
}

/** Somebody whom solving again would put elsewhere; null: among those who wait. */
export interface WouldMove {
  readonly name: string;
  readonly from: string | null;
  readonly to: string | null;
}

export interface PlacesBoard {
  readonly question: ApplicantsDocument;
  readonly placed: readonly Placed[];
  readonly sizes: readonly BoardSize[];
  readonly waiting: readonly BoardPerson[];
  readonly withoutBody: readonly { readonly name: string; readonly missing: readonly string[] }[];
  /** Null where it cannot be solved, for more are locked in a size than it has places. */
  readonly wouldMove: readonly WouldMove[] | null;
}

/** What stands where by now, and what solving anew would make of it. */
export function placesBoard(
  rows: PlacingRows,
  asked: { readonly considering: Considering; readonly now: Date },
): PlacesBoard {
  const { document, withoutBody } = placingQuestion(rows, asked);
  const answer = placedByEngine(document);
  const placed = placedNow(rows);
  const drawn = new BoardPeople(rows, document, answer);
  const standing = rows.testers.filter((tester) => takesPlaceNow(tester, asked.now));
  const left = placesLeft(rows, asked.now);
  const isPlaced = new Set(placed.map(({ applicant }) => applicant));
  return {
    question: document,
    placed,
    sizes: rows.pattern.sizes.map(({ id, label, body }) => {
      const testers = standing.filter(({ size }) => size === id);
      const applicants = placed.filter(({ size }) => size === id).map(({ applicant }) => applicant);
      const { least, wanted } = own(rows.places, id) ?? { least: 0, wanted: 0 };
      const missing = Math.max(0, least - testers.length - applicants.length);
      return {
        bodyCm: document.fitBy.flatMap((measurement) => own(body, measurement) ?? []),
        ...{ id, label, least, wanted, missing, invited: testers.length },
        people: [
          ...testers.map((tester) => drawn.tester(tester, asked.now)),
          ...applicants.map((applicant) => drawn.applicant(applicant, id)),
        ],
        over: Math.max(0, applicants.length - (own(left, id)?.wanted ?? 0)),
        nearest: missing === 0 ? null : drawn.nearest(id),
      };
    }),
    waiting: rows.applicants
      .filter((applicant) => applicant.word !== "no" && drawn.isAsked(applicant) && !isPlaced.has(applicant))
      .map((applicant) => drawn.applicant(applicant, null)),
    withoutBody: withoutBody.map(({ applicant: { name }, missing }) => ({ name, missing })),
    wouldMove: answer.status === "faults" ? null : wouldMove(rows, placed, answer),
  };
}

function wouldMove(
  { applicants }: PlacingRows,
  placed: readonly Placed[],
  answer: Extract<PlacedApplicants, { status: "optimal" }>,
): WouldMove[] {
  const sizes = answeredSizes(applicants, answer);
  const stands = new Map(placed.map(({ applicant, size }) => [applicant.applicationId, size]));
  return applicants.flatMap(({ applicationId, name, hold }) => {
    const [from, to] = [stands.get(applicationId) ?? null, sizes.get(applicationId) ?? null];
    return from === to || hold !== null ? [] : [{ name, from, to }];
  });
}

/** Draws people of a call on its board. */
class BoardPeople {
  private readonly words: PlaceWords;
  private readonly fitBy: readonly string[];
  private readonly names: ReadonlyMap<string, string>;
  private readonly asked: ReadonlyMap<string, EngineApplicant>;
  private readonly placed: ReadonlyMap<string, PlacedApplicant>;
  private readonly waiting: ReadonlyMap<string, WaitingApplicant>;
  private readonly short: readonly ShortSize[];

  constructor(
    rows: PlacingRows,
    private readonly document: ApplicantsDocument,
    answer: PlacedApplicants,
  ) {
    const { placed, waiting, short } = answer.status === "faults" ? { placed: [], waiting: [], short: [] } : answer;
    this.words = new PlaceWords(rows.pattern);
    this.fitBy = fitMeasurements(rows);
    this.names = new Map(rows.applicants.map(({ code, name }) => [code, name]));
    this.asked = new Map(document.applicants.map((applicant) => [applicant.id, applicant]));
    this.placed = new Map(placed.map((each) => [each.applicant, each]));
    this.waiting = new Map(waiting.map((each) => [each.applicant, each]));
    this.short = short;
  }

  isAsked({ code }: Applicant): boolean {
    return this.asked.has(code);
  }

  tester(tester: PlacedTester, now: Date): BoardPerson {
    const { testerId, name, size, body } = tester;
    const state = testerState(tester, now);
    const standing = state === "accepted" || state === "brought in" ? state : "invited";
    return {
      ...{ key: testerId, name, standing, size, choice: null, applicant: null },
      ...{ body: body ?? {}, fit: this.fit({ id: "tester", body: body ?? {} }, size), why: TESTER_WORDS[standing] },
    };
  }

  applicant(applicant: Applicant, size: string | null): BoardPerson {
    const { applicationId, code, name, hold, body, said } = applicant;
    const known = this.asked.get(code) ?? { id: code, body: body ?? {} };
    return {
      ...{ key: applicationId, name, size, body: body ?? {}, applicant },
      standing: size === null ? "waiting" : hold === "size" ? "locked" : "placed",
      fit: size === null ? null : this.fit(known, size),
      choice: size === null ? null : choiceWords(said, size),
      why: this.why(applicant, size),
    };
  }

  /** Those who come nearest to a size that is short, as long as the solver leaves it short too. */
  nearest(size: string): readonly Nearest[] | null {
    const short = this.short.find((each) => each.size === size);
    if (short === undefined) return null;
    return short.nearest.flatMap(({ applicant, reason }) => {
      const found = this.asked.get(applicant);
      const fit = found === undefined ? null : this.fit(found, size);
      if (fit === null) return [];
      return [{ name: this.names.get(applicant) ?? applicant, fit, takes: this.words.wouldTake(reason) }];
    });
  }

  private why({ code, hold }: Applicant, size: string | null): string {
    if (hold === "size") return this.words.placed({ kind: "locked", differences: [] });
    if (hold === "waiting") return this.words.waiting({ kind: "excluded" });
    const placed = this.placed.get(code);
    if (placed !== undefined && placed.size === size) return this.words.placed(placed.reason);
    if (placed !== undefined) return `Solved again, she would come to ${this.words.size(placed.size)}.`;
    const waiting = this.waiting.get(code);
    if (size !== null) return waiting === undefined ? "" : "Solved again, she would wait.";
    return waiting === undefined ? "" : this.words.waiting(waiting.reason);
  }

  private fit(applicant: EngineApplicant, size: string): FitInSize | null {
    const isKnown = this.fitBy.every((id) => own(applicant.body, id) !== undefined);
    const isSize = this.document.pattern.sizes.some(({ id }) => id === size);
    return isKnown && isSize ? fitInSize({ document: this.document, applicant, size }) : null;
  }
}

const TESTER_WORDS = {
  invited: "Invited; her answer is awaited.",
  accepted: "She has accepted.",
  "brought in": "Her report was brought in.",
} as const;
