import { generateKeyPairSync, randomUUID, verify } from "node:crypto";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeMessages } from "@/features/mail/mutations";
import { nextPurge, purgeMessages } from "@/features/mail/purge-mutations";
import { database } from "@/server/database";
import { linkTo } from "@/server/link-key";
import { inTransaction } from "@/server/transaction";
import { makeViewer } from "./make-account";
import { inviteTo, makeCall } from "./invited-tester";
import { refusal, startMailServer } from "./mail-server";
import { CONTENT, emptyOutbox, work, write } from "./outbox-work";

// Before the settings are first read.
const server = await startMailServer();
process.env.SMTP_URL = `smtp://127.0.0.1:${server.port}`;
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";
process.env.DKIM_KEY_FILE = join(mkdtempSync(join(tmpdir(), "sizewright-dkim-")), "key.pem");
const { privateKey, publicKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
writeFileSync(process.env.DKIM_KEY_FILE, privateKey.export({ type: "pkcs8", format: "pem" }));

const DAY_MS = 24 * 60 * 60 * 1_000;

const { takenAddresses } = emptyOutbox(server);

describe("a message", () => {
  it("is sent if its transaction is done, and not if that fails", async () => {
    const failing = inTransaction(async (transaction) => {
      await writeMessages(transaction, [
        { kind: "place-offered", address: "a@example.org", content: CONTENT, about: {} },
      ]);
      throw new Error("on purpose");
    });
    await expect(failing).rejects.toThrow("on purpose");
    await write(["b@example.org"]);
    expect(await work()).toBe(1);
    expect(takenAddresses()).toEqual(["b@example.org"]);
    expect(await work()).toBe(0);
  });

  it("says the same in plain text and HTML, with the sender, whom to answer, and no answer by machines", async () => {
    await write(["b@example.org"]);
    await work();
    const [mail] = server.taken;
    expect(mail?.subject).toBe("You’re invited");
    expect(mail?.from?.text).toBe('"Sizewright" <mail@sizes.example>');
    expect(mail?.replyTo?.text).toBe('"Ana" <ana@example.org>');
    expect(mail?.headers.get("auto-submitted")).toBe("auto-generated");
    expect(mail?.text).toBe(
      "Hello Bea <b>,\n\nWould you make size M?\n\nStart: Monday 1 March\n\n> 1 < 2\n> rows\n\nAna\n\n-- \nSent by Sizewright at localhost:3000, because you applied to a test.\n",
    );
    expect(mail?.html).toContain("Hello Bea &lt;b&gt;,");
    expect(mail?.html).toContain("<blockquote>1 &lt; 2\nrows</blockquote>");
    expect(mail?.html).toContain("prefers-color-scheme: dark");
  });

  it("gets its personal link when it is sent: the database holds no key", async () => {
    const id = randomUUID();
    const to = { before: "/invited/", key: "invitation", id, version: 3 } as const;
    await write(["b@example.org"], { parts: [{ link: "Answer", to }] });
    const row = await database().message.findFirstOrThrow();
    const link = linkTo("invitation", { id, version: 3 });
    expect(JSON.stringify(row)).not.toContain(link.split(".")[1]);
    await work();
    expect(server.taken[0]?.text).toContain(`Answer:\nhttp://localhost:3000/invited/${link}\n`);
    expect(server.taken[0]?.html).toContain(`href="http://localhost:3000/invited/${link}"`);
  });

  it("cannot add headers by a name or subject of several lines", async () => {
    await write(["b@example.org"], { subject: "One\r\nBcc: all@example.org", name: "Bea\r\nCc: all@example.org" });
    await work();
    expect(takenAddresses()).toEqual(["b@example.org"]);
    expect(server.taken[0]?.bcc).toBeUndefined();
    expect(server.taken[0]?.cc).toBeUndefined();
  });

  it("is signed with the key that the operator has given", async () => {
    await write(["b@example.org"]);
    await work();
    const lines = server.taken[0]?.headerLines ?? [];
    const line = (key: string) => lines.find((header) => header.key === key)?.line ?? "";
    const [whole, tags] = [line("dkim-signature"), line("dkim-signature").replaceAll(/\s+/g, "")];
    expect(tags).toContain("d=sizes.example;");
    expect(tags).toContain("s=sizewright;");
    // RFC 6376, 3.4.2 and 3.7: each signed header in small letters on one line, at last the signature's own without its value.
    const relaxed = (header: string) =>
      header
        .replace(/^([^:]+):\s*/, (_, name: string) => `${name.toLowerCase()}:`)
        .replaceAll(/\s+/g, " ")
        .trim();
    const signed = /;h=([^;]+);/.exec(tags)?.[1]?.split(":") ?? [];
    const own = relaxed(whole.replace(/b=[A-Za-z0-9+/=\s]+$/, "b="));
    const text = [
      ...signed.map((name) => relaxed(line(name.toLowerCase()))).filter((header) => header !== ""),
      own,
    ].join("\r\n");
    const signature = Buffer.from(/;b=([^;]+)$/.exec(tags)?.[1] ?? "", "base64");
    expect(signed.map((name) => name.toLowerCase())).toContain("from");
    expect(verify("sha256", Buffer.from(text), publicKey, signature)).toBe(true);
  });

  it("goes with the person whom it is to or about", async () => {
    const access = await makeCall(await makeViewer("Ana"));
    const testerId = await inviteTo(access);
    await database().message.deleteMany();
    const about = { callId: access.callId, testerId };
    await inTransaction((transaction) =>
      writeMessages(transaction, [{ kind: "place-offered", address: "bea@example.org", content: CONTENT, about }]),
    );
    server.behaviour = { recipient: () => refusal(550, "5.1.1 No such user") };
    await work();
    expect(await database().refusedAddress.count()).toBe(1);
    await database().tester.delete({ where: { id: testerId } });
    expect(await database().message.count()).toBe(0);
    expect(await database().refusedAddress.count()).toBe(0);
  });

  it("loses its words some days after it was sent, and is still known to have been", async () => {
    await write(["b@example.org"]);
    await work();
    expect(await nextPurge(new Date(Date.now() + 13 * DAY_MS))).toBeNull();
    const later = new Date(Date.now() + 15 * DAY_MS);
    expect(await nextPurge(later)).not.toBeNull();
    await purgeMessages(later);
    expect(await nextPurge(later)).toBeNull();
    const row = await database().message.findFirstOrThrow();
    expect([row.content, row.sentAt === null]).toEqual([null, false]);
  });
});
