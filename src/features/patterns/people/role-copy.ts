import type { HelperRole, Role } from "../access";

export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  owner: "Owner",
  editor: "Can edit",
  viewer: "Can view",
};

/** What a helper can do, after "can" or "you can". */
export const HELPER_MAY: Readonly<Record<HelperRole, string>> = {
  viewer: "see its numbers, its tests and what testers report, and change nothing",
  editor: "see and change everything in it: numbers, revisions, tests and decisions on reports",
};
