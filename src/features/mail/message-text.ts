import { greeting } from "./greeting-computed";
import type { MessageContent } from "./schema";

/** A message's content with the links made. */
export interface WrittenMessage extends Omit<MessageContent, "parts"> {
  readonly parts: readonly WrittenPart[];
  /** The address that people open, such as `sizes.example`. */
  readonly site: string;
}

export type WrittenPart =
  | { readonly text: string }
  | { readonly quote: string }
  | { readonly facts: readonly (readonly [string, string])[] }
  | { readonly link: string; readonly address: string };

/** A message as plain text. */
export function messageText({ name, parts, from, because, site }: WrittenMessage): string {
  return [
    greeting(name),
    ...parts.map(partText),
    ...(from === null ? [] : [from.name]),
    `-- \n${lastLine(because, site)}`,
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

export function lastLine(because: string, site: string): string {
  return `Sent by Sizewright at ${site}, ${because}.`;
}
