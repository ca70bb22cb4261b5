import { act, actions, routes, visit } from "./access-answers";
import { ACTIONS } from "./access-actions";
import { PAGES } from "./access-pages";
import { absentWorld, KINDS, makeWorld, type World } from "./access-world";
import { signInByCookie } from "./designer";
import { expect, test } from "./fixtures";

// The page for what is not there is one that the browser tells of.
test.use({ expectedErrors: /status of 404/ });

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
  const { patternId, callId, revisionId, token, link } = world;
  // A tester's own pages are looked at as hers who has one.
  const testerId = path.startsWith("/testing/") ? world.ownTesterId : world.testerId;
  const ids: Readonly<Record<string, string>> = {
    patternId,
    callId,
    testerId,
    revisionId,
    token,
    link,
    measurementId: "bust",
    number: "1",
  };
  return path.replace(/\[(\w+)\]/g, (whole, name: string) => ids[name] ?? whole);
}

for (const [route, { path, answers }] of Object.entries(PAGES)) {
  test(`${route} is for whom it is for`, async ({ page, context }) => {
    const world = await looked();
    for (const kind of KINDS) {
      await context.clearCookies();
      const person = world.people[kind];
      if (person !== null) await signInByCookie(context, person);
      const { answer, seen } = await visit(page, route, path(world));
      expect(answer, kind).toBe(answers[kind]);
      if (answer !== "nothing") continue;
      const absent = await visit(page, route, path(absentWorld(world)));
      expect(seen, `${kind}: somebody else's looks like what never was`).toBe(absent.seen);
    }
  });
}

for (const [action, { sends, answers }] of Object.entries(ACTIONS)) {
  test(`${action} is for whom it is for`, async ({ context }) => {
    const world = await makeWorld();
    for (const kind of KINDS) {
      await context.clearCookies();
      const person = world.people[kind];
      if (person !== null) await signInByCookie(context, person);
      const answer = await act(context.request, action, { sends: sends(world), fill: (path) => fill(path, world) });
      expect(answer, kind).toBe(answers[kind]);
      if (answer !== "not-found") continue;
      const absent = absentWorld(world);
      const ofAbsent = await act(context.request, action, { sends: sends(absent), fill: (path) => fill(path, absent) });
      expect(ofAbsent, `${kind}: somebody else's looks like what never was`).toBe(answer);
    }
  });
}
