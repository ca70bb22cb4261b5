import "server-only";
import { createHmac, timingSafeEqual } from "node:crypto";
import { z } from "zod";
import { environment } from "./environment";

/** What a link gives access to; a key of one kind does not work for another. */
export type LinkKind = "application" | "email" | "invitation" | "reminders" | "summary" | "tester";

export interface LinkedRow {
  readonly id: string;
  /** Raised in the row to invalidate its link. */
  readonly version: number;
}

/**
 * A secret that only this server can derive, again and again: it is not stored, so reading the database opens nothing.
 */
export function linkKey(kind: LinkKind, { id, version }: LinkedRow): string {
  const { NEXTAUTH_SECRET: secret } = environment();
  return createHmac("sha256", secret).update(`link ${kind} ${id} ${version}`).digest("base64url");
}

/** A part of an address that leads to a row and opens it: its id and its key. */
export function linkTo(kind: LinkKind, row: LinkedRow): string {
  return `${row.id}.${linkKey(kind, row)}`;
}

/** The id that a link leads to, proved or not; null for what is no link at all. */
export function linkedId(link: string): string | null {
  const id = z.uuid().safeParse(link.split(".", 1)[0]);
  return id.success ? id.data : null;
}

/** The id of the row that a link opens, where every link of its kind has one version; null where it opens none. */
export function openedId(link: string, kind: LinkKind, version: number): string | null {
  const id = linkedId(link);
  return id !== null && opens(link, kind, { id, version }) ? id : null;
}

/** True where the link is the row's own, of its present version. */
export function opens(link: string, kind: LinkKind, row: LinkedRow): boolean {
  return isKey(link.slice(row.id.length + 1), kind, row) && link.startsWith(`${row.id}.`);
}

/** True where the text is the row's key. */
export function isKey(text: string, kind: LinkKind, row: LinkedRow): boolean {
  const [said, right] = [Buffer.from(text), Buffer.from(linkKey(kind, row))];
  return said.length === right.length && timingSafeEqual(said, right);
}
