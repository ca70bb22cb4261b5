import { greeting } from "./greeting-computed";
import type { MessageContent } from "./schema";

/** A message's content with the links made. */
export interface WrittenMessage extends Omit<MessageContent, "parts" | "fewer"> {
  readonly parts: readonly WrittenPart[];
  /** The address that people open, such as `sizes.example`. */
  readonly site: string;
  /** The address where its reader chooses to get fewer; null where there is no choice. */
  readonly fewer: string | null;
}

export type WrittenPart =
  | { readonly text: string }
  | { readonly quote: string }
  | { readonly facts: readonly (readonly [string, string])[] }
  | { readonly link: string; readonly address: string };

/** A message as plain text. */
export function messageText({ name, parts, from, because, site, fewer }: WrittenMessage): string {
  return [
    greeting(name),
    ...parts.map(partText),
    ...(from === null ? [] : [from.name]),
    `-- \n${lastLine(because, site)}`,
    ...(fewer === null ? [] : [`${FEWER}:\n${fewer}`]),
  ]
    .join("\n\n")
    .concat("\n");
}

function partText(part: WrittenPart): string {
  if ("text" in part) return part.text;
  if ("quote" in part)
    return part.quote
      .split("\n")
      .map((line) => `> ${line}`)
      .join("\n");
  if ("facts" in part) return part.facts.map(([label, value]) => `${label}: ${value}`).join("\n");
  return `${part.link}:\n${part.address}`;
}

/** The words of the link to `fewer`. */
export const FEWER = "Get fewer of these, or none";

export function lastLine(because: string, site: string): string {
  return `Sent by Sizewright at ${site}, ${because}.`;
}
