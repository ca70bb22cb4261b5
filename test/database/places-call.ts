import { randomUUID } from "node:crypto";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { placingRows } from "@/features/recruiting/places/data";
import { sendPlacing } from "@/features/recruiting/places/mutations";
import { placedNow, placingName } from "@/features/recruiting/places/placing";
import { createPattern } from "@/features/patterns/mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { applicantsDocument } from "../factories/applicants";
import { makeViewer } from "./make-account";

/** Days that the call is at, of every test here. */
export const NOW = new Date("2026-11-26T12:00:00Z");
export const LATER = new Date("2090-01-01T00:00:00Z");

export interface PlacesCall {
  readonly callId: string;
  readonly patternId: string;
  readonly owner: Viewer;
  readonly access: CallAccess;
}

/** A published call of sizes S, M and L (bust 90, 98 and 108 cm) with places; no size may have more than are wanted there, unless said otherwise. */
export async function placesCall(
  wanted: Readonly<Record<string, number>>,
  given: { readonly owner?: Viewer; readonly most?: number } = {},
): Promise<PlacesCall> {
  const owner = given.owner ?? (await makeViewer());
  const { patternId } = await createPattern(owner, { document: applicantsDocument().pattern, reason: "Begun" });
  const { id: callId } = await database().call.create({ data: { patternId, title: "Invented call" } });
  const dates = { applyUntil: "2026-11-20", startOn: "2026-11-22", swatchBy: "2026-12-01", reportBy: "2027-01-10" };
  const texts = { introduction: "", asks: "", yarn: "", tools: "", gives: "" };
  const document = { ...texts, timeZone: "Europe/Lisbon", dates, bodyAsked: ["bust"], fitBy: ["bust"] };
  await database().listing.create({
    data: { callId, publishedAt: NOW, applyUntil: NOW, document: { ...document, mostApplications: null } },
  });
  await database().agreement.create({ data: { callId, version: 1, text: "Yes." } });
  const places = Object.entries(wanted).map(([size, capacity]) => ({
    ...{ callId, size, least: 1, wanted: capacity },
    most: given.most ?? capacity,
  }));
  await database().place.createMany({ data: places });
  return { callId, patternId, owner, access: await callAccess(owner, callId, "owner") };
}

interface Applying {
  readonly bust: number | null;
  readonly decision?: "yes" | "maybe" | "no" | null;
  readonly accepts?: readonly string[];
  readonly accountId?: string;
}

/** Somebody who applies; a yes unless said otherwise. */
export async function apply(
  { callId }: PlacesCall,
  name: string,
  { bust, decision = "yes", accepts, accountId }: Applying,
): Promise<string> {
  const position = await database().application.count({ where: { callId } });
  const said = { forAnother: false, yarn: "", tool: "", unit: "cm", terms: "uk", timeZone: "Pacific/Auckland" };
  const { id } = await database().application.create({
    data: {
      ...{ callId, position, decision, agreementVersion: 1, agreedAt: NOW, idempotencyKey: randomUUID() },
      ...(accountId === undefined ? {} : { accountId }),
      document: {
        ...said,
        accepts: accepts ? [...accepts] : null,
        prefers: [],
        experience: "some",
        handle: "",
        pastWork: "",
      },
      contact: { create: { callId, name, email: `${randomUUID()}@example.org` } },
      ...(bust === null ? {} : { body: { create: { measurements: { bust } } } }),
    },
  });
  return id;
}

/** Name -> size of all who stand in one, `Name (lock)` where the designer has settled it. */
export async function standing({ callId }: PlacesCall): Promise<Record<string, string>> {
  const rows = await database().application.findMany({
    where: { callId, size: { not: null } },
    orderBy: { position: "asc" },
    include: { contact: true },
  });
  return Object.fromEntries(
    rows.map(({ contact, size, pin }) => [`${contact?.name}${pin === null ? "" : " (lock)"}`, size ?? ""]),
  );
}

/** Name -> size of all who are invited. */
export async function invited({ callId }: PlacesCall): Promise<Record<string, string>> {
  const rows = await database().tester.findMany({
    where: { callId },
    orderBy: { position: "asc" },
    include: { contact: true },
  });
  return Object.fromEntries(rows.map(({ contact, size }) => [contact?.name ?? "", size]));
}

/** The name of the placing as it stands. */
export async function seen({ access }: PlacesCall): Promise<string> {
  return placingName(placedNow(await placingRows(access)));
}

/** Invites all who stand in a size. @returns how many. */
export async function send(call: PlacesCall): Promise<number> {
  return await sendPlacing(call.access, { saw: await seen(call), expiresAt: LATER });
}
