/** Why a start was given up, told to the person at the terminal in one sentence. */
export class StartError extends Error {}
