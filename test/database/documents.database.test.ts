import { expect, it } from "vitest";
import { storeCall } from "@/features/testing/report/document-mutations";
import { gaps } from "@/engine/gaps";
import { CALL_FORMAT, parseCall, type CallDocument } from "@/engine/pattern";
import { callAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { patternDocument, tester } from "../factories/pattern";
import { makeViewer } from "./make-account";

function sampleCall(): CallDocument {
  const readings = [
    { measurement: "bust", cm: 101.3, decision: "keep" },
    { measurement: "length", cm: 39.7, state: "unwashed" },
  ] as const;
  return {
    format: CALL_FORMAT,
    pattern: patternDocument(),
    places: { small: { least: 1, wanted: 2 }, large: { least: 0, wanted: 3 } },
    testers: [
      tester({ id: "constructor", readings, body: { bust: 91.5 } }),
      tester({
        id: "b",
        size: "large",
        worked: { width: 120 },
        readings,
        fit: [{ area: "bust", scale: -1 }],
        hours: 30,
      }),
      tester({ id: "a", readings: [{ measurement: "bust", cm: 0.1 + 0.2 + 99 }] }),
    ],
  };
}

async function importAndExport(viewer: Viewer, call: CallDocument): Promise<string> {
  const { callId } = await storeCall(viewer, { call, title: "A call" });
  return JSON.stringify(await callDocument(await callAccess(viewer, callId, "viewer")));
}

it("hands a call out so that it comes in and out again byte for byte, with the same analysis", async () => {
  const viewer = await makeViewer();
  const call = sampleCall();
  const once = await importAndExport(viewer, call);
  const parsed = parseCall(JSON.parse(once));
  if (!parsed.ok) throw new Error("an export is a call document");
  const twice = await importAndExport(viewer, parsed.document);
  expect(twice).toBe(once);
  expect(JSON.stringify(gaps(parsed.document))).toBe(JSON.stringify(gaps(call)));
});

it("stores nothing of a call when one of its reports cannot be stored", async () => {
  const viewer = await makeViewer();
  const call = sampleCall();
  const impossible = tester({ id: "c", readings: [{ measurement: "bust", cm: Number.NaN }] });
  await expect(
    storeCall(viewer, { call: { ...call, testers: [...call.testers, impossible] }, title: "A" }),
  ).rejects.toThrow();
  expect(await database().pattern.count({ where: { memberships: { some: { accountId: viewer.accountId } } } })).toBe(0);
});

it("answers another designer as if the call were not there", async () => {
  const [owner, other] = [await makeViewer(), await makeViewer()];
  const { callId } = await storeCall(owner, { call: sampleCall(), title: "A call" });
  await expect(callAccess(other, callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  await expect(callAccess(other, "constructor", "viewer")).rejects.toMatchObject({ code: "not-found" });
});
