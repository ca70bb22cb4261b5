import { PASSWORD_LEAST } from "./schema";

/** Built on the server, so that the browser needs no schema for one sentence. */
export const PASSWORD_HINT = `At least ${PASSWORD_LEAST} characters of any kind, including spaces.`;
