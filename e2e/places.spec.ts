import { randomUUID } from "node:crypto";
import { z } from "zod";
import { applicantsDocument } from "../test/factories/applicants";
import { expectNoSidewaysScroll } from "./import-call";
import { query, type Designer } from "./designer";
import { expect, test } from "./fixtures";

/** A published call of S, M and L with a place each, and three who said what their bust is: 90, 92 and 98 cm. */
async function makeCall({ accountId }: Designer): Promise<string> {
  const [patternId, callId] = [randomUUID(), randomUUID()];
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  const owner = "INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')";
  await query(owner, [patternId, accountId]);
  const revision = "INSERT INTO revision (pattern_id, number, document, reason) VALUES ($1, 1, $2, 'First')";
  await query(revision, [patternId, JSON.stringify(applicantsDocument().pattern)]);
  await query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'Invented call')", [callId, patternId]);
  const dates = { applyUntil: "2026-01-01", startOn: "2090-01-02", swatchBy: "2090-02-01", reportBy: "2090-04-01" };
  const texts = { introduction: "", asks: "", yarn: "", tools: "", gives: "", mostApplications: null };
  const listing = { ...texts, timeZone: "Europe/Lisbon", dates, bodyAsked: ["bust"], fitBy: ["bust"] };
  const told = "INSERT INTO listing (call_id, document, published_at, apply_until) VALUES ($1, $2, now(), now())";
  await query(told, [callId, JSON.stringify(listing)]);
  await query("INSERT INTO agreement (call_id, version, text) VALUES ($1, 1, 'Yes.')", [callId]);
  for (const size of ["small", "medium", "large"])
    await query("INSERT INTO place (call_id, size, least, wanted, most) VALUES ($1, $2, 1, 1, 3)", [callId, size]);
  for (const [at, bust] of [90, 92, 98].entries()) await apply(callId, { at, bust });
  return callId;
}

const NAMES = ["Ann", "Bea", "Cleo", "Dora"];

async function apply(callId: string, { at, bust }: { readonly at: number; readonly bust: number }): Promise<void> {
  const id = randomUUID();
  const said = { forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us", timeZone: "Pacific/Auckland" };
  const document = { ...said, accepts: ["small", "medium"], prefers: [], experience: "some", handle: "", pastWork: "" };
  const application =
    "INSERT INTO application (id, call_id, position, document, agreement_version, agreed_at, idempotency_key, decision) VALUES ($1, $2, $3, $4, 1, now(), $1, 'yes')";
  await query(application, [id, callId, at, JSON.stringify(document)]);
  const contact = "INSERT INTO application_contact (application_id, call_id, name, email) VALUES ($1, $2, $3, $4)";
  await query(contact, [id, callId, NAMES[at], `${id}@example.org`]);
  const body = "INSERT INTO application_body (application_id, measurements) VALUES ($1, $2)";
  await query(body, [id, JSON.stringify({ bust })]);
}

test("a designer gives places, settles one by hand, sends, and fills a place that fell free", async ({
  page,
  designer,
}) => {
  const callId = await makeCall(designer);
  await page.goto(`/calls/${callId}/sizes`);
  await page.getByRole("button", { name: "Assign sizes" }).click();
  await expect(page.getByText("This is already the best arrangement")).toBeVisible();
  const table = page.getByRole("region", { name: "Sizes and testers" });
  await expect(table.getByRole("row", { name: /^Ann/ })).toContainText("Best fit");
  await expect(table.getByRole("row", { name: /^L/ })).toContainText("1 tester missing");
  await expect(page.getByRole("img", { name: "Bust of everyone, and the sizes" })).toBeVisible();
  await expectNoSidewaysScroll(page);

  await table.getByRole("row", { name: /^Cleo/ }).getByText("Change").click();
  await table.getByRole("combobox", { name: "Move to" }).filter({ visible: true }).selectOption("L");
  await table.getByRole("button", { name: "Move and lock" }).filter({ visible: true }).click();
  await expect(table.getByRole("row", { name: /^Cleo/ })).toContainText("locked by you");
  await expect(
    page.getByText("Something has changed: assigning sizes again would give a different result"),
  ).toBeVisible();
  await page.getByRole("button", { name: "Assign sizes again" }).click();
  await expect(table.getByRole("row", { name: /^Bea/ })).toContainText("6.0 cm below");

  await page.getByLabel("They can reply until the end of").fill("2020-01-01");
  await page.getByRole("button", { name: "Invite 3 people" }).click();
  await expect(page.getByText("This day is in the past.")).toBeVisible();
  await page.getByLabel("They can reply until the end of").fill("2089-01-01");
  await page.getByRole("button", { name: "Invite 3 people" }).click();
  await expect(page.getByText("3 people are invited")).toBeVisible();
  await page.getByText("Message to copy for Cleo").click();
  await expect(page.getByLabel("Message for Cleo")).toHaveValue(/Hello Cleo,[\s\S]*size L[\s\S]*\/invited\//);

  await query("UPDATE tester SET declined_at = now() WHERE call_id = $1 AND size = 'small'", [callId]);
  await apply(callId, { at: 3, bust: 91 });
  await page.goto(`/calls/${callId}/sizes`);
  await expect(page.getByRole("heading", { name: "1 open spot in S" })).toBeVisible();
  await expect(page.getByRole("radio", { name: /^Dora bust 1.0 cm above: close/ })).toBeChecked();
  await expect(page.getByLabel("Report by the end of")).toHaveValue("2090-04-01");
  const exported = await page.request.get(`/calls/${callId}/sizes/export`);
  const { places } = z
    .object({ places: z.record(z.string(), z.object({ wanted: z.number() })) })
    .parse(await exported.json());
  expect(places).toMatchObject({ small: { wanted: 1 }, medium: { wanted: 0 }, large: { wanted: 0 } });
  await page.getByRole("button", { name: "Invite to S" }).click();
  await expect(page.getByText("Message to copy for Dora")).toBeVisible();
  await expect(page.getByRole("heading", { name: "1 open spot in S" })).toHaveCount(0);
});
