/** The value that leaves a proposal as it is. */
export const LEAVE = "leave";

export const CHOSEN = "take.";

/** Name of the field in which the proposal with this index is accepted or left. */
export function chosenField(index: number): string {
  return `${CHOSEN}${index}`;
}
