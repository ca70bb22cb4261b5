import type { AskedField, SendFields } from "../save-answer";
import { pendingFields, storePending, type Pending } from "./pending-fields";

/** What the status line below a form shows. */
export interface SaveStatus {
  readonly state: "idle" | "saved" | "saving" | "offline" | "closed";
  /** Fields that are not saved yet. */
  readonly waiting: number;
  /** False if the browser refuses to store: the page must stay open. */
  readonly outlives: boolean;
  readonly asked: readonly AskedField[];
  /** Why nothing more can be saved. */
  readonly message: string;
}

/** Before the page's scripts have loaded. */
export const IDLE: SaveStatus = { state: "idle", waiting: 0, outlives: true, asked: [], message: "" };

const PAUSE_MS = 900;
const LONGEST_WAIT_MS = 60_000;

/**
 * Saves a tester's fields: each change stays on the device until the server has it, and is sent after a pause, when the
 * connection comes back, or on the next visit.
 */
export class FieldAutosave {
  status: SaveStatus = IDLE;
  private known: Readonly<Record<string, string>> = {};
  private pending = new Map<string, Pending>();
  private asked = new Map<string, AskedField>();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private isSending = false;
  private failures = 0;
  private isRunning = false;
  private listeners = new Set<() => void>();

  constructor(
    private readonly testerId: string,
    private readonly send: SendFields,
  ) {}

  /** Loads what an earlier visit left, and sends it. @param asked what a form that was sent without scripts left. */
  readonly start = (asked: readonly AskedField[] = []): (() => void) => {
    this.isRunning = true;
    this.pending = pendingFields(this.testerId);
    for (const each of asked) {
      this.asked.set(each.field, each);
      if (each.there !== null) this.put(each.field, { was: "", becomes: each.here });
    }
    if (this.pending.size > 0) this.flush();
    this.tell();
    const retry = () => this.flush();
    window.addEventListener("online", retry);
    document.addEventListener("visibilitychange", retry);
    return () => {
      window.removeEventListener("online", retry);
      document.removeEventListener("visibilitychange", retry);
      this.flush();
      this.isRunning = false;
    };
  };

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** False until what an earlier visit left is loaded: until then no field may be filled. */
  get hasStarted(): boolean {
    return this.isRunning;
  }

  /** Takes over what the server holds, as a freshly rendered page shows it. */
  learn(stored: Readonly<Record<string, string>>): void {
    this.known = stored;
  }

  /** The text of a field: the device's while it is not saved, else the server's; undefined if the server has none. */
  textOf(field: string): string | undefined {
    const pending = this.pending.get(field);
    return pending ? (pending.becomes ?? "") : this.known[field];
  }

  type(field: string, becomes: string | null): void {
    const before = this.pending.get(field);
    const was = before?.was ?? this.known[field] ?? "";
    if (becomes !== null && (this.textOf(field) ?? "") === becomes) return;
    this.asked.delete(field);
    this.put(field, { was, becomes });
    this.sendAfter(PAUSE_MS);
    this.tell();
  }

  /** Applies the choice between two devices' texts. @returns the field's text from now on. */
  choose({ field, there, here }: AskedField, which: "there" | "here"): string {
    this.asked.delete(field);
    if (which === "here" && there !== null) this.put(field, { was: there, becomes: here });
    else {
      this.put(field, null);
      this.known = { ...this.known, [field]: there ?? "" };
    }
    this.flush();
    this.tell();
    return this.textOf(field) ?? "";
  }

  /** Sends pending changes at once. */
  flush(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    if (!this.isSending) void this.sendPending();
  }

  /** Sends pending changes at once, those too that come meanwhile. @returns when they are saved, or cannot be for now. */
  async settled(): Promise<void> {
    await new Promise<void>((resolve) => {
      const look = () => {
        if (this.status.state === "saving") return this.flush();
        stop();
        resolve();
      };
      const stop = this.subscribe(look);
      look();
    });
  }

  private async sendPending(): Promise<void> {
    const sent = [...this.pending].filter(([field]) => !this.asked.has(field));
    if (sent.length === 0) return;
    this.isSending = true;
    this.tell();
    const changes = sent.map(([field, change]) => ({ field, ...change }));
    const answer = await this.send(this.testerId, changes).catch(() => null);
    this.isSending = false;
    if (answer?.status === "saved") this.settle(sent, answer.asked);
    else if (answer?.isFinal) this.tell({ state: "closed", message: answer.message });
    else {
      this.failures += 1;
      this.sendAfter(Math.min(LONGEST_WAIT_MS, PAUSE_MS * 2 ** this.failures));
      this.tell({ state: "offline" });
    }
  }

  private settle(sent: readonly (readonly [string, Pending])[], asked: readonly AskedField[]): void {
    this.failures = 0;
    for (const each of asked) this.asked.set(each.field, each);
    for (const [field, { becomes }] of sent) {
      if (this.asked.has(field)) continue;
      this.known = { ...this.known, [field]: becomes ?? "" };
      const now = this.pending.get(field);
      this.put(
        field,
        now === undefined || now.becomes === becomes ? null : { was: becomes ?? "", becomes: now.becomes },
      );
    }
    if ([...this.pending.keys()].some((field) => !this.asked.has(field))) this.sendAfter(PAUSE_MS);
    this.tell();
  }

  private put(field: string, change: Pending | null): void {
    if (change === null) this.pending.delete(field);
    else this.pending.set(field, change);
    const outlives = storePending(this.testerId, field, change);
    if (!outlives) this.status = { ...this.status, outlives };
  }

  private sendAfter(ms: number): void {
    clearTimeout(this.timer);
    // Once its form is unmounted, the next one has taken over what is left.
    if (this.isRunning) this.timer = setTimeout(() => this.flush(), ms);
  }

  private tell(news: Partial<SaveStatus> = {}): void {
    const waiting = [...this.pending.keys()].filter((field) => !this.asked.has(field)).length;
    const isOffline = this.failures > 0 && waiting > 0;
    const state = waiting === 0 ? "saved" : isOffline ? "offline" : "saving";
    const { outlives } = this.status;
    this.status = { state, waiting, outlives, asked: [...this.asked.values()], message: "", ...news };
    for (const listener of this.listeners) listener();
  }
}
