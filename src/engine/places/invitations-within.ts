/**
 * How many to invite to a size so that enough finish, but never more than it may have.
 *
 * @param needed by `invitationsFor`; null where no number is enough.
 * @param most by `mostTesters`.
 */
export function invitationsWithin(
  needed: number | null,
  most: number,
): { readonly invite: number; readonly isEnough: boolean } {
  const isEnough = needed !== null && needed <= most;
  return { invite: isEnough ? needed : most, isEnough };
}
