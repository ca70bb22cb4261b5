import { randomUUID } from "node:crypto";
import { describe, expect, it, vi } from "vitest";
import { emailLinkAccess } from "@/features/accounts/email-links/access";
import { mailSignInLink, mailSignUpLink } from "@/features/accounts/email-links/ask-mutations";
import { readEmailLink } from "@/features/accounts/email-links/email-link-data";
import { nextEmailLinkPurge, purgeEmailLinks } from "@/features/accounts/email-links/purge-mutations";
import { signInWithLink, signUpWithLink } from "@/features/accounts/email-links/use-mutations";
import { changePassword, createAccount } from "@/features/accounts/mutations";
import { isPassword } from "@/features/accounts/password";
import { database } from "@/server/database";
import { refusal, startMailServer } from "./mail-server";
import { makeAccount } from "./make-account";
import { emptyOutbox, work } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;
const PASSWORD = "chosen behind the link";
const VISITOR = { viewerId: null };

emptyOutbox(server);

/** The last part of the link in the newest mail. */
async function mailedLink(): Promise<string> {
  await work();
  const found = /\/email-links\/(\S+)/.exec(server.taken.at(-1)?.text ?? "")?.[1];
  if (found === undefined) throw new Error("no link was mailed");
  return found;
}

async function provenAccount() {
  const account = await makeAccount();
  await database().account.update({ where: { id: account.id }, data: { emailVerifiedAt: new Date() } });
  return account;
}

/** A link that signs in to this account, as its owner holds it. */
async function signInLink({ email }: { readonly email: string }) {
  await mailSignInLink(email);
  return await emailLinkAccess(await mailedLink());
}

async function endOf(access: Awaited<ReturnType<typeof signInLink>>) {
  return (await readEmailLink(access)).end;
}

describe("a link that signs in", () => {
  it("works once, though two press its button at the same time, and looking at it uses nothing up", async () => {
    const account = await provenAccount();
    const access = await signInLink(account);
    expect(await endOf(access)).toBeNull();
    expect(await endOf(access)).toBeNull();
    const both = await Promise.all([signInWithLink(access, VISITOR), signInWithLink(access, VISITOR)]);
    expect(both.filter((owner) => owner !== null)).toEqual([
      { accountId: account.id, name: account.name, sessionVersion: account.sessionVersion },
    ]);
    expect(await endOf(access)).toBe("used");
  });

  it("works for an hour", async () => {
    const account = await provenAccount();
    const access = await signInLink(account);
    vi.setSystemTime(Date.now() + 61 * MINUTE_MS);
    expect(await endOf(access)).toBe("expired");
    expect(await signInWithLink(access, VISITOR)).toBeNull();
  });

  it("is replaced by a newer one, and by a new password", async () => {
    const account = await provenAccount();
    const first = await signInLink(account);
    const second = await signInLink(account);
    expect([await endOf(first), await endOf(second)]).toEqual(["replaced", null]);
    expect(await signInWithLink(first, VISITOR)).toBeNull();
    await changePassword({ accountId: account.id, sessionVersion: account.sessionVersion, password: PASSWORD });
    expect(await endOf(second)).toBe("replaced");
    expect(await signInWithLink(second, VISITOR)).toBeNull();
  });

  it("sets a new password that ends every session", async () => {
    const account = await provenAccount();
    const owner = await signInWithLink(await signInLink(account), { ...VISITOR, newPassword: PASSWORD });
    expect(owner?.sessionVersion).toBe(account.sessionVersion + 1);
    const { passwordHash } = await database().account.findUniqueOrThrow({ where: { id: account.id } });
    expect(await isPassword(passwordHash, PASSWORD)).toBe(true);
  });

  it("asks for a new password where the address was never confirmed, for a stranger may know the old one", async () => {
    const account = await makeAccount({ password: "preset by a stranger" });
    const access = await signInLink(account);
    expect(server.taken.at(-1)?.text).toMatch(/^Hello,/);
    expect(await signInWithLink(access, VISITOR)).toBeNull();
    const other = await makeAccount();
    expect(await signInWithLink(access, { viewerId: other.id })).toBeNull();
    expect(await signInWithLink(access, { ...VISITOR, newPassword: PASSWORD })).not.toBeNull();
    const row = await database().account.findUniqueOrThrow({ where: { id: account.id } });
    expect(row.emailVerifiedAt).not.toBeNull();
    expect(await isPassword(row.passwordHash, "preset by a stranger")).toBe(false);
  });

  it("confirms the address of the signed-in person without a new password", async () => {
    const account = await makeAccount();
    expect(await signInWithLink(await signInLink(account), { viewerId: account.id })).not.toBeNull();
    const row = await database().account.findUniqueOrThrow({ where: { id: account.id } });
    expect([row.emailVerifiedAt === null, row.sessionVersion]).toEqual([false, account.sessionVersion]);
  });

  it("cannot be made from another link's id or key, and the database holds no key", async () => {
    const account = await provenAccount();
    await mailSignInLink(account.email);
    const [row] = [await database().emailLink.findFirstOrThrow({ where: { accountId: account.id } })];
    const message = await database().message.findFirstOrThrow();
    const key = (await mailedLink()).split(".")[1] ?? "";
    expect(JSON.stringify([row, message])).not.toContain(key);
    await expect(emailLinkAccess(`${randomUUID()}.${key}`)).rejects.toThrow();
    await expect(emailLinkAccess(`${row.id}.${"x".repeat(key.length)}`)).rejects.toThrow();
  });

  it("is not mailed to an address without an account", async () => {
    await mailSignInLink(`${randomUUID()}@example.org`);
    expect(await work()).toBe(0);
  });
});

describe("a link that creates an account", () => {
  it("lets whoever reads the mailbox choose name and password, once, and confirms the address", async () => {
    const email = `${randomUUID()}@example.org`;
    await mailSignUpLink(email);
    expect(await database().account.count({ where: { email } })).toBe(0);
    const access = await emailLinkAccess(await mailedLink());
    expect(await signUpWithLink(access, { name: "Maja", password: PASSWORD })).toMatchObject({ name: "Maja" });
    const row = await database().account.findUniqueOrThrow({ where: { email } });
    expect(row.emailVerifiedAt).not.toBeNull();
    expect(await isPassword(row.passwordHash, PASSWORD)).toBe(true);
    expect(await signUpWithLink(access, { name: "Again", password: "another long password" })).toBeNull();
    expect((await readEmailLink(access)).end).toBe("used");
  });

  it("tells the owner of an account with this address, and leaves that account as it is", async () => {
    const account = await provenAccount();
    await mailSignUpLink(account.email);
    const access = await emailLinkAccess(await mailedLink());
    expect(server.taken.at(-1)?.subject).toBe("You already have a Sizewright account");
    expect(await signUpWithLink(access, { name: "Else", password: PASSWORD })).toBeNull();
    expect(await database().account.findUniqueOrThrow({ where: { id: account.id } })).toMatchObject({
      ...{ name: account.name, passwordHash: account.passwordHash },
    });
    expect(await signInWithLink(access, VISITOR)).toMatchObject({ accountId: account.id });
  });

  it("changes nothing where the address has got an account in another way meanwhile", async () => {
    const email = `${randomUUID()}@example.org`;
    await mailSignUpLink(email);
    const access = await emailLinkAccess(await mailedLink());
    await createAccount({ email, name: "First", password: "the first password" });
    expect(await signUpWithLink(access, { name: "Second", password: PASSWORD })).toBeNull();
    expect(await signInWithLink(access, { ...VISITOR, newPassword: PASSWORD })).toBeNull();
    expect((await database().account.findUniqueOrThrow({ where: { email } })).name).toBe("First");
  });

  it("leaves nothing of an address that refuses mail, once the link is long over", async () => {
    const email = `${randomUUID()}@example.org`;
    server.behaviour = { recipient: () => refusal(550, "5.1.1 No such user") };
    await mailSignUpLink(email);
    await work();
    expect(await database().refusedAddress.count({ where: { address: email } })).toBe(1);
    const later = new Date(Date.now() + 15 * DAY_MS);
    expect(await nextEmailLinkPurge(later)).not.toBeNull();
    await purgeEmailLinks(later);
    expect(await nextEmailLinkPurge(later)).toBeNull();
    expect(await database().message.count({ where: { address: email } })).toBe(0);
    expect(await database().refusedAddress.count({ where: { address: email } })).toBe(0);
  });
});
