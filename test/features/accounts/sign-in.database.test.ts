import { randomUUID } from "node:crypto";
import { verify } from "@node-rs/argon2";
import { describe, expect, it, vi } from "vitest";
import { changePassword, createAccount, endAllSessions } from "@/features/accounts/mutations";
import { proveAccount } from "@/features/accounts/prove-account";
import { database } from "@/server/database";
import { viewerOf } from "@/server/viewer";
import { makeAccount } from "../../database/make-account";

// The same, watched.
vi.mock("@node-rs/argon2", async (load) => {
  const argon2 = await load<typeof import("@node-rs/argon2")>();
  return { ...argon2, verify: vi.fn(argon2.verify) };
});

const PASSWORD = "a long enough password";

/** A new address each, so that tests do not spend each other's tries. */
const address = () => `address ${randomUUID()}`;

describe("signing in", () => {
  it("opens the account with its password and with no other", async () => {
    const { id, email } = await makeAccount({ password: PASSWORD });
    expect(await proveAccount({ email, password: PASSWORD }, address())).toMatchObject({ id, sessionVersion: 1 });
    expect(await proveAccount({ email, password: `${PASSWORD} ` }, address())).toBeNull();
  });

  it("answers the same where there is no account, after checking a hash of the same cost", async () => {
    const { email } = await makeAccount({ password: PASSWORD });
    const costs: (string | undefined)[] = [];
    for (const whom of [email, "nobody@example.org"]) {
      vi.mocked(verify).mockClear();
      expect(await proveAccount({ email: whom, password: "a wrong password" }, address())).toBeNull();
      expect(verify).toHaveBeenCalledOnce();
      costs.push(/^\$argon2id\$v=\d+\$[^$]+/.exec(String(vi.mocked(verify).mock.lastCall?.[0]))?.[0]);
    }
    expect(costs[0]).toMatch(/m=\d+,t=\d+/);
    expect(costs[1]).toBe(costs[0]);
  });

  it("counts tries against the account, whoever makes them, and says when to come back", async () => {
    const { email } = await makeAccount({ password: PASSWORD });
    for (let wrong = 1; wrong <= 8; wrong += 1) {
      expect(await proveAccount({ email, password: "a wrong password" }, address())).toBeNull();
    }
    await expect(proveAccount({ email, password: PASSWORD }, address())).rejects.toThrow(
      "Too many attempts. Try again in 15 minutes.",
    );
  });

  it("counts tries against the address, whomever they are for", async () => {
    const from = address();
    const tries = Array.from({ length: 40 }, (_, index) =>
      proveAccount({ email: `absent-${index}@example.org`, password: "a wrong password" }, from),
    );
    expect(new Set(await Promise.all(tries))).toEqual(new Set([null]));
    const { email } = await makeAccount({ password: PASSWORD });
    await expect(proveAccount({ email, password: PASSWORD }, from)).rejects.toThrow(/Too many attempts/);
  });

  it("lets tries at once through no more than one after another", async () => {
    const { email } = await makeAccount({ password: PASSWORD });
    const tries = Array.from({ length: 12 }, () => proveAccount({ email, password: "a wrong password" }, address()));
    const outcomes = await Promise.allSettled(tries);
    expect(outcomes.filter(({ status }) => status === "fulfilled")).toHaveLength(8);
  });

  it("forgets the tries once the password was right", async () => {
    const { email } = await makeAccount({ password: PASSWORD });
    for (let round = 1; round <= 3; round += 1) {
      for (let wrong = 1; wrong <= 5; wrong += 1)
        await proveAccount({ email, password: "a wrong password" }, address());
      expect(await proveAccount({ email, password: PASSWORD }, address())).not.toBeNull();
    }
  });
});

describe("making an account", () => {
  it("leaves an account that exists as it is", async () => {
    const { id, email, name } = await makeAccount({ password: PASSWORD });
    await createAccount({ email, name: "Somebody Else", password: "another long password" });
    expect(await database().account.findMany({ where: { email }, select: { id: true, name: true } })).toEqual([
      { id, name },
    ]);
    expect(await proveAccount({ email, password: PASSWORD }, address())).toMatchObject({ id });
  });
});

describe("a session", () => {
  it("is of the account and its present version only", async () => {
    const { id: accountId, email, name } = await makeAccount();
    expect(await viewerOf({ accountId, sessionVersion: 1 })).toEqual({ accountId, email, name, unit: "cm" });
    expect(await viewerOf({ accountId, sessionVersion: 2 })).toBeNull();
    expect(await viewerOf({ accountId: randomUUID(), sessionVersion: 1 })).toBeNull();
  });

  it("ends everywhere when the owner says so", async () => {
    const { id: accountId } = await makeAccount();
    await endAllSessions(accountId);
    expect(await viewerOf({ accountId, sessionVersion: 1 })).toBeNull();
    expect(await viewerOf({ accountId, sessionVersion: 2 })).not.toBeNull();
  });

  it("ends with a new password, which a session that has ended cannot set", async () => {
    const { id: accountId, email } = await makeAccount({ password: PASSWORD });
    const change = { accountId, sessionVersion: 1, password: "another long password" };
    expect(await changePassword(change)).toBe(2);
    expect(await viewerOf({ accountId, sessionVersion: 1 })).toBeNull();
    await expect(changePassword({ ...change, password: "a third long password" })).rejects.toThrow(/signed out/);
    expect(await proveAccount({ email, password: "another long password" }, address())).not.toBeNull();
  });
});
