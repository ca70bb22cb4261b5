import type { HelperRole, Role } from "../access";
import type { InvitationRead } from "./invitation-data";

/** What an invitation means for the person who opened its link. */
export type InvitationState =
  | {
      readonly status: "open";
      readonly patternName: string;
      readonly ownerName: string;
      readonly role: HelperRole;
      readonly expiresAt: Date;
      /** They may view already, and would be able to edit. */
      readonly raises: boolean;
    }
  | { readonly status: "ended"; readonly at: Date }
  | { readonly status: "withdrawn" | "used" | "own" }
  /** The viewer accepted it, and no longer has access to the pattern. */
  | { readonly status: "left" }
  /** The viewer already has a role at least as high as this. */
  | { readonly status: "joined"; readonly patternId: string; readonly role: Role }
  /** The viewer accepted it. */
  | { readonly status: "taken"; readonly patternId: string };

/** @param holderId the account of the person who opened the link; null for a visitor. */
export function invitationState(read: InvitationRead, holderId: string | null, now: Date): InvitationState {
  const { patternId, patternName, ownerName, role, expiresAt, holderRole } = read;
  if (read.acceptedAt !== null) return takenState(read, holderId);
  if (read.withdrawnAt !== null) return { status: "withdrawn" };
  if (expiresAt <= now) return { status: "ended", at: expiresAt };
  if (holderRole === "owner") return { status: "own" };
  const raises = holderRole === "viewer" && role === "editor";
  if (holderRole !== null && !raises) return { status: "joined", patternId, role: holderRole };
  return { status: "open", patternName, ownerName, role, expiresAt, raises };
}

function takenState({ acceptedById, holderRole, patternId }: InvitationRead, holderId: string | null): InvitationState {
  if (holderId === null || acceptedById !== holderId) return { status: "used" };
  return holderRole === null ? { status: "left" } : { status: "taken", patternId };
}
