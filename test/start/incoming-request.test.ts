import { expect, it } from "vitest";
import { clientAddress, loggedPath } from "@/start/incoming-request";

it.each([
  { proxies: 0, socket: "203.0.113.9", forwarded: undefined, is: "203.0.113.9" },
  { proxies: 0, socket: "::ffff:203.0.113.9", forwarded: "198.51.100.1", is: "203.0.113.9" },
  { proxies: 1, socket: "10.0.0.1", forwarded: "198.51.100.1", is: "198.51.100.1" },
  { proxies: 1, socket: "10.0.0.1", forwarded: "made up, 198.51.100.1", is: "198.51.100.1" },
  { proxies: 2, socket: "10.0.0.1", forwarded: "made up, 198.51.100.1, 10.0.0.2", is: "198.51.100.1" },
  { proxies: 2, socket: "10.0.0.1", forwarded: "198.51.100.1", is: "198.51.100.1" },
  { proxies: 1, socket: "10.0.0.1", forwarded: undefined, is: "10.0.0.1" },
  { proxies: 1, socket: "10.0.0.1", forwarded: "", is: "10.0.0.1" },
])("the address of $forwarded behind $proxies proxies at $socket is $is", ({ proxies, socket, forwarded, is }) => {
  expect(clientAddress(socket, forwarded, proxies)).toBe(is);
});

it.each([
  [undefined, "/"],
  ["/patterns/1?size=m", "/patterns/1"],
  ["/sign-in?next=%2Finvitations%2Fsecret", "/sign-in"],
  ["/invitations/secret", "/invitations/…"],
  ["/invitations/secret/more?_rsc=1", "/invitations/…"],
  ["/invited/secret", "/invited/…"],
  ["/applications/secret", "/applications/…"],
  ["/email-links/secret", "/email-links/…"],
  ["/reminders/secret/stop", "/reminders/…"],
  ["/invitations", "/invitations"],
])("the path of %s is logged as %s", (url, path) => {
  expect(loggedPath(url)).toBe(path);
});
