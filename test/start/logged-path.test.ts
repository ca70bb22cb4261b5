import { expect, it } from "vitest";
import { loggedPath } from "@/start/logged-path";

it.each([
  [undefined, "/"],
  ["/patterns/1?size=m", "/patterns/1"],
  ["/sign-in?next=%2Finvitations%2Fsecret", "/sign-in"],
  ["/invitations/secret", "/invitations/…"],
  ["/invitations/secret/more?_rsc=1", "/invitations/…"],
  ["/invited/secret", "/invited/…"],
  ["/applications/secret", "/applications/…"],
  ["/invitations", "/invitations"],
])("of %s is %s", (url, path) => {
  expect(loggedPath(url)).toBe(path);
});
