/** What may stand in square brackets in a message to several testers, and is filled in for each. */
export const MESSAGE_FIELDS = ["name", "size", "swatch day", "report day"] as const;

type MessageField = (typeof MESSAGE_FIELDS)[number];

/** What each field stands for, for one tester; null where that is not known. */
export type FieldValues = Readonly<Record<MessageField, string | null>>;

const FIELD = /\[([^[\]\n]*)\]/g;

/** The text as one tester gets it; a field that is not known stays as it was typed. */
export function fillFields(text: string, values: FieldValues): string {
  return text.replaceAll(FIELD, (whole, name: string) => (isField(name) ? values[name] : null) ?? whole);
}

interface Filled {
  readonly name: string;
  readonly values: FieldValues;
}

/**
 * What is wrong with the fields of a text, each in a sentence.
 *
 * @param advice what to do about a field that is not known for somebody.
 */
export function fieldFaults(
  text: string,
  recipients: readonly Filled[],
  advice = "Leave it out or untick them.",
): string[] {
  const names = new Set([...text.matchAll(FIELD)].map(([, name = ""]) => name));
  return [...names].flatMap((field) => {
    if (!isField(field))
      return `Nothing can be filled in for “[${field}]”. Use ${known(recipients)}, or put your words in round brackets.`;
    const missing = recipients.filter(({ values }) => values[field] === null);
    return missing.length === 0 ? [] : `“[${field}]” is not known for ${listed(missing)}. ${advice}`;
  });
}

function isField(name: string): name is MessageField {
  return MESSAGE_FIELDS.some((field) => field === name);
}

/** The fields that are known for everybody. */
function known(recipients: readonly Filled[]): string {
  return MESSAGE_FIELDS.filter((field) => recipients.every(({ values }) => values[field] !== null))
    .map((field) => `[${field}]`)
    .join(", ");
}

const MOST_NAMED = 3;

function listed(people: readonly Filled[]): string {
  const names = people.slice(0, MOST_NAMED).map(({ name }) => name);
  return people.length > names.length
    ? `${names.join(", ")} and ${people.length - names.length} more`
    : names.join(", ");
}
