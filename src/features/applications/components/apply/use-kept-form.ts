"use client";

import { useEffect, useEffectEvent, useSyncExternalStore, type RefObject } from "react";

/** What was typed, by field; a field that can be ticked more than once has several values. */
type Kept = Readonly<Record<string, readonly string[]>>;

interface KeptForm {
  readonly form: RefObject<HTMLFormElement | null>;
  readonly storageKey: string;
  /** Fields that are not kept, as what somebody agrees to. */
  readonly without: readonly string[];
  /** Hears what stood there when the page opened. */
  readonly onRestored: (kept: Kept) => void;
}

/**
 * Keeps what is typed into a form in this browser, and puts it back when the page is opened again. What was typed before
 * the page's scripts had loaded wins over what was kept.
 *
 * @returns whether this browser keeps anything; what to do at every input; how to forget it all.
 */
export function useKeptForm({ form, storageKey, without, onRestored }: KeptForm) {
  const isKept = useSyncExternalStore(noChanges, storageWorks, () => false);
  const restore = useEffectEvent(() => {
    const kept = read(storageKey);
    if (form.current === null || kept === null) return;
    fill(form.current, kept);
    onRestored(kept);
  });
  useEffect(() => restore(), []);
  const keep = () => {
    if (form.current) write(storageKey, form.current, without);
  };
  const forget = () => {
    localStorage.removeItem(storageKey);
    window.location.reload();
  };
  return { isKept, keep, forget };
}

function noChanges(): () => void {
  return () => undefined;
}

let works: boolean | undefined;

function storageWorks(): boolean {
  works ??= tryStorage();
  return works;
}

function tryStorage(): boolean {
  try {
    localStorage.setItem("sizewright-kept", "");
    localStorage.removeItem("sizewright-kept");
    return true;
  } catch {
    return false;
  }
}

function write(storageKey: string, form: HTMLFormElement, without: readonly string[]): void {
  const data = new FormData(form);
  const names = new Set([...data.keys()].filter((name) => !name.startsWith("$") && !without.includes(name)));
  const kept = Object.fromEntries([...names].map((name) => [name, data.getAll(name)]));
  try {
    localStorage.setItem(storageKey, JSON.stringify(kept));
  } catch {
    // Storage is full or refused: the page itself still holds it.
  }
}

function read(storageKey: string): Kept | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(storageKey) ?? "null");
    return isKeptForm(kept) ? kept : null;
  } catch {
    return null;
  }
}

function isKeptForm(kept: unknown): kept is Kept {
  if (typeof kept !== "object" || kept === null) return false;
  return Object.values(kept).every(
    (values) => Array.isArray(values) && values.every((value) => typeof value === "string"),
  );
}

function fill(form: HTMLFormElement, kept: Kept): void {
  for (const control of form.elements) {
    if (control instanceof HTMLInputElement && ["checkbox", "radio"].includes(control.type)) {
      const values = kept[control.name];
      if (control.checked === control.defaultChecked && (values !== undefined || control.type === "checkbox"))
        control.checked = values?.includes(control.value) ?? control.defaultChecked;
    } else if (control instanceof HTMLSelectElement) {
      control.value = kept[control.name]?.[0] ?? control.value;
    } else if (isTextField(control) && control.value === control.defaultValue) {
      control.value = kept[control.name]?.[0] ?? control.value;
    }
  }
}

function isTextField(control: Element): control is HTMLInputElement | HTMLTextAreaElement {
  return control instanceof HTMLTextAreaElement || (control instanceof HTMLInputElement && control.type !== "hidden");
}
