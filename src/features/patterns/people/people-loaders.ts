import "server-only";
import { patternAccess, type Role } from "../access";
import { listInvitations, type OpenInvitation } from "./invitation-data";
import { loadPattern, type PatternPage } from "../loaders";
import { listPeople, type Person } from "./people-data";

export interface PeoplePage extends PatternPage {
  readonly role: Role;
  readonly people: readonly Person[];
  /** Only for the owner; empty for others. */
  readonly invitations: readonly OpenInvitation[];
}

/** Everyone with a role in a pattern. */
export async function loadPeople(patternId: string): Promise<PeoplePage> {
  const page = await loadPattern(patternId);
  const access = await patternAccess(page.viewer, patternId, "viewer");
  const [people, invitations] = await Promise.all([
    listPeople(access),
    access.role === "owner" ? listInvitations(access) : [],
  ]);
  return { ...page, role: access.role, people, invitations };
}
