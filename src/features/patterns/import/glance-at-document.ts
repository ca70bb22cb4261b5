import { ownValue } from "@/engine/pattern";

/** What a text seems to be before it is sent: enough to ask the right question, without checking it. */
export interface DocumentGlance {
  readonly kind: "pattern" | "call";
  readonly name: string;
  readonly sizes: number;
  readonly testers: number;
}

/** @returns null where the text is not one of our documents, or not yet. */
export function glanceAtDocument(text: string): DocumentGlance | null {
  const document = readRecord(text);
  const format = document && ownValue(document, "format");
  if (document === null || typeof format !== "string") return null;
  const kind = format.startsWith("sizewright/call@") ? "call" : "pattern";
  const pattern = kind === "call" ? asRecord(ownValue(document, "pattern")) : document;
  const name = pattern && ownValue(pattern, "name");
  if (pattern === null || typeof name !== "string") return null;
  return { kind, name, sizes: lengthOf(ownValue(pattern, "sizes")), testers: lengthOf(ownValue(document, "testers")) };
}

function readRecord(text: string): Readonly<Record<string, unknown>> | null {
  if (!text.includes("sizewright/")) return null;
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ""));
    return asRecord(value);
  } catch {
    return null;
  }
}

function asRecord(value: unknown): Readonly<Record<string, unknown>> | null {
  return typeof value === "object" && value !== null ? { ...value } : null;
}

function lengthOf(value: unknown): number {
  return Array.isArray(value) ? value.length : 0;
}
