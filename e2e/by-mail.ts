import { randomUUID } from "node:crypto";
import type { Browser, BrowserContext, Page } from "@playwright/test";
import type { ParsedMail } from "mailparser";
import { expect } from "./fixtures";
import { linkIn, type MailingServer } from "./mailed-journey";

interface Given {
  readonly name: string;
  readonly bust: string;
  readonly size: string;
}

/** Somebody with a phone and an address who tests by what comes in their mail; the phone keeps no cookie from mail to mail. */
export class MailedTester {
  readonly address = `${randomUUID()}@example.org`;

  private constructor(
    private readonly server: MailingServer,
    private readonly given: Given,
    private readonly phone: BrowserContext,
    readonly page: Page,
  ) {}

  static async withPhone(browser: Browser, server: MailingServer, given: Given): Promise<MailedTester> {
    const phone = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true });
    phone.setDefaultTimeout(30_000);
    return new MailedTester(server, given, phone, await phone.newPage());
  }

  get name(): string {
    return this.given.name;
  }

  async apply(callId: string): Promise<void> {
    const { page, given } = this;
    await page.goto(this.server.at(`/open-calls/${callId}/apply`));
    await page.getByLabel("Name").fill(given.name);
    await page.getByLabel("E-mail").fill(this.address);
    await page.getByRole("textbox", { name: "Bust" }).fill(given.bust);
    await page.getByRole("checkbox", { name: new RegExp(`^${given.size} for bust`) }).check();
    await page.getByLabel("First choice").selectOption({ label: given.size });
    await page.getByRole("radio", { name: "I have tested a few patterns" }).check();
    await page.getByRole("checkbox", { name: /^I have read the agreement/ }).check();
    await page.getByRole("checkbox", { name: "I am 18 or over." }).check();
    await page.getByRole("button", { name: "Send application" }).click();
    await expect(page.getByText("Thank you: your application is sent")).toBeVisible();
  }

  /** The newest mail about this. */
  async mail(subject: string): Promise<ParsedMail> {
    return await this.server.mailTo(this.address, subject);
  }

  /** Opens a link of their newest mail about this, signed in nowhere. */
  async open(subject: string, words: string): Promise<void> {
    await this.phone.clearCookies();
    await this.page.goto(linkIn(await this.mail(subject), words));
  }

  /** Opens their test by the newest mail about this. */
  async openTest(subject: string): Promise<void> {
    await this.open(subject, "Open your test");
    await this.page.getByRole("button", { name: "Open your test" }).click();
    await this.page.waitForURL(/\/testing\//);
  }

  async accept(): Promise<void> {
    await this.open("A spot to test", "Accept or decline");
    await this.page.getByRole("button", { name: "Accept" }).click();
    await expect(this.page.getByRole("heading", { name: "Make your swatch" })).toBeVisible();
  }

  async leave(): Promise<void> {
    await this.phone.close();
  }
}
