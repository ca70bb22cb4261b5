"use client";

import { useSearchParams } from "next/navigation";
import {
  createContext,
  useContext,
  useState,
  useSyncExternalStore,
  type KeyboardEvent,
  type MouseEvent,
  type ReactNode,
} from "react";
import { flushSync } from "react-dom";
import { AskedContext } from "../autosave/asked-at-field";
import type { MeasuredState } from "./measured";

/** The open row, and how another one is opened; null closes all. */
interface OpenRow {
  readonly open: string | null;
  readonly turnTo: (id: string | null) => void;
}

const OpenRowContext = createContext<OpenRow>({ open: null, turnTo: () => undefined });

/**
 * Rows of which one is open. It stands in the address, so that no save and no way back opens another one: behind the #, for a
 * save reloads a page whose query was changed without the server.
 */
export function MeasuredRows({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  const asked = useSearchParams().get("m");
  const anchor = useSyncExternalStore(
    notWatched,
    () => window.location.hash,
    () => "",
  );
  const [turnedTo, setTurnedTo] = useState<string | null>();
  const open = turnedTo === undefined ? (rowIn(anchor) ?? asked) : turnedTo;
  const turnTo = (id: string | null) => {
    // At once, so that the field can take the keyboard while the tap lasts.
    flushSync(() => setTurnedTo(id));
    window.history.replaceState(null, "", `#${rowId(id ?? "")}`);
    if (id !== null) enter(id);
  };
  return (
    <OpenRowContext value={{ open, turnTo }}>
      <ol aria-label={label} className="rounded-sheet border border-line bg-sheet shadow-sheet">
        {children}
      </ol>
    </OpenRowContext>
  );
}

interface HeadingProps {
  readonly letter: string;
  readonly label: string;
  readonly state: MeasuredState;
  /** Its readings; "" for none. */
  readonly typed: string;
  readonly unit: string;
}

interface MeasuredRowProps extends HeadingProps {
  /** Id of the measurement. */
  readonly id: string;
  /** Id of the next one; undefined for the last. */
  readonly next: string | undefined;
  /** False once the report can no longer be changed: its form then has no buttons. */
  readonly hasForm: boolean;
  readonly children: ReactNode;
}

/** A measurement in the list: its name and value, which open its fields below. */
export function MeasuredRow({ id, next, hasForm, children, ...told }: MeasuredRowProps) {
  const { open, turnTo } = useContext(OpenRowContext);
  const isOpen = useIsOpenRow(id);
  const toggle = (event: MouseEvent) => {
    event.preventDefault();
    turnTo(open === id ? null : id);
  };
  const goOn = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || next === undefined || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    turnTo(next);
  };
  const heading = <RowHeading {...told} />;
  const disclosure = { "aria-expanded": isOpen, "aria-controls": fieldsId(id), onClick: toggle };
  return (
    <li id={rowId(id)} className="measured-row">
      <h2>
        {hasForm ? (
          <button type="submit" formAction={addressOf(id)} {...disclosure}>
            {heading}
          </button>
        ) : (
          <a href={addressOf(id)} {...disclosure}>
            {heading}
          </a>
        )}
      </h2>
      <div id={fieldsId(id)} hidden={!isOpen} onKeyDown={goOn} className="px-[min(1rem,5vw)] pb-4 pt-1">
        {children}
      </div>
    </li>
  );
}

const STATES: Readonly<Record<MeasuredState, { readonly sign: string; readonly words: string }>> = {
  empty: { sign: "○", words: "not measured" },
  read: { sign: "●", words: "measured" },
  asked: { sign: "?", words: "open question" },
  faulty: { sign: "▲", words: "needs fixing" },
  changed: { sign: "–", words: "changed on purpose" },
};

function RowHeading({ letter, label, state, typed, unit }: HeadingProps) {
  const { sign, words } = STATES[state];
  return (
    <>
      <span className={`w-4 shrink-0 text-center font-semibold ${state === "faulty" ? "text-thread" : ""}`}>
        <span aria-hidden="true">{sign}</span>
        <span className="sr-only">{words}:</span>
      </span>
      <span className="min-w-0 flex-1 basis-24 wrap-break-word">
        <span className="numbers mr-0.5 font-semibold">{letter}</span> {label}
      </span>
      <bdi className="numbers max-w-full truncate text-soft" aria-hidden={typed === "" && state === "empty"}>
        {typed === "" ? words : /[a-z"″”]/i.test(typed) ? typed : `${typed} ${unit}`}
      </bdi>
    </>
  );
}

/** Whether a measurement's row shows its fields: it was opened, or one of them is asked about. */
export function useIsOpenRow(id: string): boolean {
  const { open } = useContext(OpenRowContext);
  const isAsked = useContext(AskedContext)?.asked.some(({ field }) => field.startsWith(`reading.${id}.`)) ?? false;
  return open === id || isAsked;
}

/** Opens the next row; without JavaScript it saves, too. */
export function NextRow({ id, label }: { readonly id: string; readonly label: string }) {
  const { turnTo } = useContext(OpenRowContext);
  return (
    <button
      type="submit"
      formAction={addressOf(id)}
      aria-label={`Next: ${label}`}
      className="button button-quiet shrink-0"
      onClick={(event) => {
        event.preventDefault();
        turnTo(id);
      }}
    >
      Next
    </button>
  );
}

/** Without JavaScript the query opens a row. */
function addressOf(id: string): string {
  return `?m=${id}#${rowId(id)}`;
}

const ROW = "row-";

/** The row that an anchor names; "" where none is open, null where it names something else. */
function rowIn(anchor: string): string | null {
  return anchor.startsWith(`#${ROW}`) ? anchor.slice(ROW.length + 1) : null;
}

/** Only this page itself changes its anchor. */
function notWatched(): () => void {
  return () => undefined;
}

function rowId(id: string): string {
  return `${ROW}${id}`;
}

function fieldsId(id: string): string {
  return `${ROW}${id}-fields`;
}

/** Shows a row from its top, for a keyboard soon covers the lower half of the screen. */
function enter(id: string): void {
  const row = document.getElementById(rowId(id));
  row?.scrollIntoView({ block: "start" });
  row?.querySelector<HTMLInputElement>("input:not([type=hidden])")?.focus({ preventScroll: true });
}
