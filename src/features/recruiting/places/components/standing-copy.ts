import type { Standing } from "../board-people";
import type { TesterState } from "../tester-state";
import type { PersonMark } from "../stored-board";

export const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  placed: "placed",
  locked: "locked by you",
  waiting: "waiting",
  invited: "invited",
  accepted: "accepted",
  "brought in": "report imported",
};

export const STANDING_MARKS: Readonly<Record<Standing, PersonMark>> = {
  placed: "placed",
  locked: "locked",
  waiting: "waiting",
  invited: "invited",
  accepted: "invited",
  "brought in": "invited",
};

export const STATE_WORDS: Readonly<Record<TesterState, string>> = {
  "brought in": "Report imported",
  invited: "Invited, no answer yet",
  accepted: "Accepted",
  declined: "Declined",
  withdrawn: "Invitation withdrawn",
  lapsed: "No answer in time",
  stopped: "Had to stop",
};
