/** The value that leaves a proposal as it is. */
export const LEAVE = "leave";

export const CHOSEN = "take.";

/** Name of the field in which a proposal, by its place in the list, is taken or left. */
export function chosenField(at: number): string {
  return `${CHOSEN}${at}`;
}
