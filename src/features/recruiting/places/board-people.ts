import "server-only";
import { ownValue } from "@/engine/pattern";
import { fitOnMarks, type Applicant as EngineApplicant, type FitInSize } from "@/engine/places";
import { choiceWords } from "./fit-copy";
import { stateOf, type PlacingPerson } from "./placing-data";
import { PlaceWords } from "./reason-copy";
import type { Considering, StoredBoard, StoredSize } from "./stored-board";
import type { TesterState } from "./tester-state";

/** Whether a person's size comes from the solver or the designer, or they are already invited. */
export type Standing = "placed" | "locked" | "waiting" | Extract<TesterState, "invited" | "accepted" | "brought in">;

/** A person on the ruler and in the table. */
export interface BoardPerson {
  readonly key: string;
  readonly name: string;
  readonly standing: Standing;
  /** Null while they wait. */
  readonly size: string | null;
  readonly body: Readonly<Record<string, number>>;
  /** Null where a measurement that decides the fit is unknown, or they have no size. */
  readonly fit: FitInSize | null;
  /** Null where their preferences are unknown. */
  readonly choice: string | null;
  readonly why: string;
  /** Null for testers, who are never moved. */
  readonly applicant: { readonly applicationId: string; readonly isLeftWaiting: boolean } | null;
}

/** Combines a stored board with the people whose rows were read. */
export class BoardPeople {
  readonly words: PlaceWords;
  private readonly sizes: ReadonlyMap<string, StoredSize>;
  private readonly drawn: readonly (readonly [PlacingPerson, BoardPerson])[];

  constructor(
    private readonly board: StoredBoard,
    people: readonly PlacingPerson[],
    private readonly asked: { readonly considering: Considering; readonly now: Date },
  ) {
    this.words = new PlaceWords(board.sizes);
    this.sizes = new Map(board.sizes.map((size) => [size.id, size]));
    this.drawn = people.map((person) => [person, this.draw(person)]);
  }

  /** People whose rows were read, by position or by id. */
  among(from: number, many: number): readonly BoardPerson[] {
    return this.drawn.flatMap(([{ position }, person]) =>
      position !== null && position >= from && position < from + many ? [person] : [],
    );
  }

  /** An applicant or a tester, null where the row is gone or not read. */
  find(id: string): BoardPerson | null {
    return this.drawn.find(([, { key }]) => key === id)?.[1] ?? null;
  }

  nameOf(id: string): string {
    return this.find(id)?.name ?? "Someone who has withdrawn";
  }

  stateOf(testerId: string): TesterState | null {
    const found = this.drawn.find(([{ tester_id }]) => tester_id === testerId)?.[0];
    return found === undefined ? null : stateOf(found, this.asked.now);
  }

  /** How an applicant would fit a size; null where that is not known. */
  fitOf(applicationId: string, size: string): FitInSize | null {
    const found = this.drawn.find(([{ application_id }]) => application_id === applicationId)?.[0];
    return found === undefined ? null : this.fit(found, size);
  }

  private draw(person: PlacingPerson): BoardPerson {
    const { application_id, tester_id, number, code, size, pin, body } = person;
    const state = stateOf(person, this.asked.now);
    const name = person.name ?? code ?? `Applicant ${(number ?? 0) + 1}`;
    const shared = { name, size, body: body ?? {}, fit: size === null ? null : this.fit(person, size) };
    if (state !== null) {
      const standing = state === "accepted" || state === "brought in" ? state : "invited";
      return { ...shared, key: tester_id ?? "", standing, choice: null, applicant: null, why: TESTER_WORDS[standing] };
    }
    return {
      ...{ ...shared, key: application_id ?? "", why: this.why(person) },
      standing: size === null ? "waiting" : pin === "size" ? "locked" : "placed",
      choice: size === null ? null : choiceWords(wishesOf(person), size),
      applicant: { applicationId: application_id ?? "", isLeftWaiting: pin === "waiting" },
    };
  }

  private why({ pin, size, answer }: PlacingPerson): string {
    if (pin === "size") return this.words.placed({ kind: "locked" });
    if (pin === "waiting") return this.words.waiting({ kind: "excluded" });
    const anew = answer?.[this.asked.considering] ?? null;
    if (anew === null) return "";
    if (anew.size === null)
      return size === null ? this.words.waiting(anew.reason) : "If sizes were assigned again, they would wait.";
    if (anew.size === size) return this.words.placed(anew.reason);
    return `If sizes were assigned again, they would get ${this.words.size(anew.size)}.`;
  }

  private fit(person: PlacingPerson, size: string): FitInSize | null {
    const marks = this.sizes.get(size)?.marks;
    const body = person.body ?? {};
    if (marks === undefined || !this.board.fitBy.every((id) => ownValue(body, id) !== undefined)) return null;
    return fitOnMarks(this.engineApplicant(person), { size, marks });
  }

  /** Preferences and record count in the misfit of applicants, not of testers. */
  private engineApplicant(person: PlacingPerson): EngineApplicant {
    const { accepts, prefers } = wishesOf(person);
    const wished = prefers.filter((size) => this.sizes.has(size));
    const record = person.answer?.record ?? null;
    return {
      ...{ id: "", body: person.body ?? {} },
      ...(accepts === null ? {} : { accepts: [...accepts] }),
      ...(wished.length === 0 ? {} : { prefers: wished }),
      ...(record === null ? {} : { record }),
    };
  }
}

function wishesOf({ accepts, prefers }: PlacingPerson) {
  return { accepts: accepts ?? null, prefers: prefers ?? [] };
}

const TESTER_WORDS = {
  invited: "Invited, no answer yet.",
  accepted: "Accepted.",
  "brought in": "Their report was imported.",
} as const;
