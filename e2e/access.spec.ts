import { expect, request, test, type APIRequestContext } from "@playwright/test";
import { act, actions, routes, visit } from "./access-answers";
import { ACTIONS } from "./access-actions";
import { PAGES } from "./access-pages";
import { absentWorld, KINDS, makeWorld, type Kind, type World } from "./access-world";
import { testerCookieName } from "../src/features/testing/home/tester-cookie-name";
import { linkKey } from "../src/server/link-key";
import { query, sessionCookie } from "./designer";

test("every route and every action stands in the table", () => {
  expect(Object.keys(PAGES).sort()).toEqual(routes());
  expect(Object.keys(ACTIONS).sort()).toEqual(actions());
});

let onlyLookedAt: Promise<World> | undefined;

/** Looking changes nothing, so that pages and routes share a world. */
function looked(): Promise<World> {
  onlyLookedAt ??= makeWorld();
  return onlyLookedAt;
}

/** Puts a world's ids into an address such as /patterns/[patternId]. */
function fill(path: string, world: World): string {
  // A tester's pages are opened by the tester.
  const testerId = path.startsWith("/testing/") ? world.ownTesterId : world.testerId;
  const { patternId, callId, revisionId, token, applicationId } = world;
  const link = linkOf(path, world);
  const ids: Readonly<Record<string, string>> = {
    patternId,
    callId,
    testerId,
    revisionId,
    token,
    applicationId,
    link,
    measurementId: "bust",
    number: "1",
  };
  return path.replace(/\[(\w+)\]/g, (whole, name: string) => ids[name] ?? whole);
}

function linkOf(path: string, { link, invitedLink, emailLink, remindersLink }: World): string {
  if (path.startsWith("/email-links/")) return emailLink;
  if (path.startsWith("/reminders/")) return remindersLink;
  return path.startsWith("/invited/") ? invitedLink : link;
}

/** What a person of this kind asks with: no browser is needed to be let in or not. */
async function asking(world: World, kind: Kind): Promise<APIRequestContext> {
  const person = world.people[kind];
  const cookie = person === null ? undefined : await sessionCookie(person);
  return await request.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    extraHTTPHeaders: cookie === undefined ? {} : { Cookie: `${cookie.name}=${cookie.value}` },
  });
}

for (const [route, { path, answers }] of Object.entries(PAGES)) {
  test(`${route} is for whom it is for`, async () => {
    const world = await looked();
    const first = await asking(world, "visitor");
    // Whoever asks first waits for the route's code, and gets the page in other pieces.
    await visit(first, path(absentWorld(world)));
    await first.dispose();
    for (const kind of KINDS) {
      const asks = await asking(world, kind);
      const { answer, seen } = await visit(asks, path(world));
      expect(answer, kind).toBe(answers[kind]);
      if (answer === "nothing") {
        const absent = await visit(asks, path(absentWorld(world)));
        expect(seen, `${kind}: somebody else's looks like what never was`).toBe(absent.seen);
      }
      await asks.dispose();
    }
  });
}

test("a tester who guesses another tester's address sees what never was", async () => {
  const world = await makeWorld();
  const { ownTesterId, invitedTesterId } = world;
  await query("UPDATE tester SET accepted_at = now() WHERE id = $1", [invitedTesterId]);
  const byAccount = await asking(world, "another designer");
  const key = linkKey("tester", { id: invitedTesterId, version: 1 });
  const byLink = await request.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    extraHTTPHeaders: { Cookie: `${testerCookieName(invitedTesterId)}=${key}` },
  });
  const guesses = [
    { asks: byAccount, own: ownTesterId, others: invitedTesterId },
    { asks: byLink, own: invitedTesterId, others: ownTesterId },
  ];
  const rows = Object.entries(PAGES).filter(
    ([route, { answers }]) => route.startsWith("/testing/[testerId]") && answers["another designer"] === "shown",
  );
  for (const [route, { path }] of rows)
    for (const { asks, own, others } of guesses) {
      expect((await visit(asks, path({ ...world, ownTesterId: own }))).answer, route).toBe("shown");
      const guessed = await visit(asks, path({ ...world, ownTesterId: others }));
      expect(guessed.answer, route).toBe("nothing");
      expect(guessed.seen, route).toBe((await visit(asks, path(absentWorld(world)))).seen);
    }
  expect(rows.length).toBeGreaterThan(5);
  for (const { asks } of guesses) await asks.dispose();
});

for (const [action, { sends, answers }] of Object.entries(ACTIONS)) {
  test(`${action} is for whom it is for`, async () => {
    const world = await makeWorld();
    for (const kind of KINDS) {
      const asks = await asking(world, kind);
      const answer = await act(asks, action, { sends: sends(world), fill: (path) => fill(path, world) });
      expect(answer, kind).toBe(answers[kind]);
      if (answer === "not-found") {
        const absent = absentWorld(world);
        const ofAbsent = await act(asks, action, { sends: sends(absent), fill: (path) => fill(path, absent) });
        expect(ofAbsent, `${kind}: somebody else's looks like what never was`).toBe(answer);
      }
      await asks.dispose();
    }
  });
}
