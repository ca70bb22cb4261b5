import type { HelperRole, Role } from "../../access";

export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  owner: "Owner",
  editor: "May edit",
  viewer: "May look",
};

/** What a helper can do, after "may" or "you may". */
export const HELPER_MAY: Readonly<Record<HelperRole, string>> = {
  viewer: "look at its numbers, its calls and what testers report, and change nothing",
  editor: "look at everything in it and change it: numbers, revisions, calls and decisions on reports",
};
