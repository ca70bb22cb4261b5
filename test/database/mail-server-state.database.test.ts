import { expect, it } from "vitest";
import { operatorAccess } from "@/features/accounts/operator/access";
import { mailServerState } from "@/features/mail/server-data";
import { checkMailServer } from "@/features/mail/server-mutations";
import { environment } from "@/server/environment";
import { SMTPServer } from "smtp-server";
import { once } from "node:events";
import type { AddressInfo } from "node:net";
import { makeViewer } from "./make-account";

const server = new SMTPServer({
  disabledCommands: ["STARTTLS"],
  authMethods: ["PLAIN"],
  onAuth: (_auth, _session, callback) =>
    callback(Object.assign(new Error("5.7.8 That password is wrong"), { responseCode: 535 })),
});
const listening = server.listen(0, "127.0.0.1");
await once(listening, "listening");
process.env.SMTP_URL = `smtp://127.0.0.1:${(listening.address() as AddressInfo).port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

it("says in the mail server's own words why it takes nothing, and since when", async () => {
  expect(await mailServerState()).toBeNull();
  await checkMailServer();
  expect(await mailServerState()).toMatchObject({ failingSince: null, reply: null });
  await new Promise<void>((resolve) => server.close(resolve));
  await checkMailServer();
  const away = await mailServerState();
  expect(away?.failingSince).not.toBeNull();
  expect(away?.reply).toContain("ECONNREFUSED");
  await checkMailServer();
  expect(await mailServerState()).toMatchObject({ failingSince: away?.failingSince });
});

it("is for the account of the setting or, without it, for the first account", async () => {
  const [first, second] = [await makeViewer("First"), await makeViewer("Second")];
  expect(await operatorAccess(first)).not.toBeNull();
  expect(await operatorAccess(second)).toBeNull();
  Object.assign(environment(), { OPERATOR_EMAIL: second.email });
  expect(await operatorAccess(first)).toBeNull();
  expect(await operatorAccess(second)).not.toBeNull();
});
