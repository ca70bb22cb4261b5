const YES =
  /^(?:y|yes|yes,? .*|true|1|x|washed|blocked|washed and blocked|washed & blocked|wet blocked|ja|oui|si|sí)\.?$/i;
const NO = /^(?:n|no|no,? .*|not .*|false|0|unwashed|unblocked|nein|non)\.?$/i;

/** @returns true or false where the text says so, null where it says something else. */
export function readYesNo(text: string): boolean | null {
  if (YES.test(text)) return true;
  return NO.test(text) ? false : null;
}

export function readsAsYesOrNo(text: string): boolean {
  return readYesNo(text) !== null;
}
