import { PASSWORD_LEAST } from "./schema";

/** Reckoned on the server, so that no schema goes to the browser for a sentence. */
export const PASSWORD_HINT = `At least ${PASSWORD_LEAST} characters; any will do, spaces too.`;
