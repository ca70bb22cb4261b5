import type { Need } from "./progress-query";

/** What a designer does about a need, and the page of the call where it is done. */
interface NeedAction {
  /** "progress": about one tester it is their own page, about several the list of them. */
  readonly page: "sizes" | "progress";
  /** The link beside one tester. */
  readonly link: string;
  /** The link beside the number of testers. */
  readonly listLink: string;
}

const FIND: NeedAction = { page: "sizes", link: "Find a tester", listLink: "Find a tester" };
const GET_IN_TOUCH = { page: "progress", link: "Get in touch" } as const;

/** Lists of testers and of what needs a designer both lead where this says. */
export const NEED_ACTIONS: Readonly<Record<Need, NeedAction>> = {
  stuck: { ...GET_IN_TOUCH, listLink: "See where" },
  stopped: FIND,
  freed: FIND,
  late: { ...GET_IN_TOUCH, listLink: "See who is late" },
  lapsed: FIND,
  declined: FIND,
  "off gauge": { page: "progress", link: "See the swatch", listLink: "See who is off gauge" },
  answer: { page: "progress", link: "Read the answer", listLink: "Read what they say" },
  silent: { ...GET_IN_TOUCH, listLink: "See who" },
  behind: { ...GET_IN_TOUCH, listLink: "See who" },
};
