import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { emailLinkAccess } from "@/features/accounts/email-links/access";
import { mailAddressLink, mailDeletionLink, mailProofLink } from "@/features/accounts/email-links/ask-mutations";
import { changeAddressWithLink, signInWithLink } from "@/features/accounts/email-links/use-mutations";
import { deleteAccountWithLink } from "@/features/testing/account-data/delete-account-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { startMailServer } from "./mail-server";
import { makeAccount, makeViewer } from "./make-account";
import { emptyOutbox, work } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const { takenAddresses } = emptyOutbox(server);

/** The link in the newest mail. */
async function mailed() {
  await work();
  const found = /\/email-links\/(\S+)/.exec(server.taken.at(-1)?.text ?? "")?.[1];
  if (found === undefined) throw new Error("no link was mailed");
  return await emailLinkAccess(found);
}

function accountOf({ accountId }: Viewer) {
  return database().account.findUnique({ where: { id: accountId } });
}

it("confirms the address of whoever is signed in", async () => {
  const ann = await makeViewer();
  await mailProofLink(ann);
  await signInWithLink(await mailed(), { viewerId: ann.accountId });
  expect((await accountOf(ann))?.emailVerifiedAt).not.toBeNull();
});

it("gives the account another address once its link is used, tells the old one, and voids what was mailed there", async () => {
  const ann = await makeViewer();
  const address = `${randomUUID()}@example.org`;
  await mailProofLink(ann);
  const old = await mailed();
  await mailAddressLink(ann, address);
  const link = await mailed();
  expect(await accountOf(ann)).toMatchObject({ email: ann.email });
  // It is for this and nothing else.
  expect(await signInWithLink(link, { viewerId: ann.accountId })).toBeNull();
  expect(await deleteAccountWithLink(link)).toBe(false);
  expect(await changeAddressWithLink(link)).toEqual({ accountId: ann.accountId });
  expect(await changeAddressWithLink(link)).toBeNull();
  expect(await accountOf(ann)).toMatchObject({ email: address });
  expect((await accountOf(ann))?.emailVerifiedAt).not.toBeNull();
  expect(await signInWithLink(old, { viewerId: ann.accountId })).toBeNull();
  server.taken.length = 0;
  await work();
  expect(takenAddresses()).toEqual([ann.email]);
  expect(server.taken[0]?.text).not.toContain(address);
});

it("leaves an address to the account that has it, and tells its owner alone", async () => {
  const [ann, bea] = [await makeViewer(), await makeViewer()];
  await mailAddressLink(ann, bea.email);
  await work();
  expect(takenAddresses()).toEqual([bea.email]);
  expect(server.taken[0]?.text).not.toContain("/email-links/");
  const free = `${randomUUID()}@example.org`;
  await mailAddressLink(ann, free);
  const link = await mailed();
  await makeAccount({ email: free });
  await expect(changeAddressWithLink(link)).rejects.toThrow("has an account by now");
  expect(await accountOf(ann)).toMatchObject({ email: ann.email });
});

it("deletes the account by its mailed link, once", async () => {
  const ann = await makeViewer();
  await mailDeletionLink(ann);
  const link = await mailed();
  expect(await deleteAccountWithLink(link)).toBe(true);
  expect(await accountOf(ann)).toBeNull();
  expect(await database().message.count({ where: { address: ann.email } })).toBe(0);
  await expect(deleteAccountWithLink(link)).rejects.toMatchObject({ code: "not-found" });
});
