"use client";

import { useEffect, useEffectEvent, useSyncExternalStore, type RefObject } from "react";
import { localStore } from "@/ui/browser-store";

/** What was typed, by field; groups of checkboxes can have several values. */
type StoredTexts = Readonly<Record<string, readonly string[]>>;

interface StoredForm {
  readonly form: RefObject<HTMLFormElement | null>;
  readonly storageKey: string;
  /** Fields that are not stored, such as consent. */
  readonly without: readonly string[];
  /** Called with what was stored when the page opened. */
  readonly onRestored: (stored: StoredTexts) => void;
}

/**
 * Stores what is typed into a form in this browser, and restores it when the page is opened again. What was typed before the
 * page's scripts had loaded takes precedence.
 *
 * @returns whether this browser can store; a function to call at every input; a function that discards everything.
 */
export function useStoredForm({ form, storageKey, without, onRestored }: StoredForm) {
  const isStored = useSyncExternalStore(noChanges, storageWorks, () => false);
  const restore = useEffectEvent(() => {
    const stored = read(storageKey);
    if (form.current === null || stored === null) return;
    fill(form.current, stored);
    onRestored(stored);
  });
  useEffect(() => restore(), []);
  const store = () => {
    if (form.current) write(storageKey, form.current, without);
  };
  const discard = () => {
    localStore.write(storageKey, undefined);
    window.location.reload();
  };
  return { isStored, store, discard };
}

function noChanges(): () => void {
  return () => undefined;
}

let works: boolean | undefined;

function storageWorks(): boolean {
  works ??= localStore.write("sizewright-storage-test", "") && localStore.write("sizewright-storage-test", undefined);
  return works;
}

/** Where storage is full or refused, the page itself still has the text. */
function write(storageKey: string, form: HTMLFormElement, without: readonly string[]): void {
  const data = new FormData(form);
  const names = new Set([...data.keys()].filter((name) => !name.startsWith("$") && !without.includes(name)));
  localStore.write(storageKey, Object.fromEntries([...names].map((name) => [name, data.getAll(name)])));
}

function read(storageKey: string): StoredTexts | null {
  const stored = localStore.read(storageKey);
  return isStoredTexts(stored) ? stored : null;
}

function isStoredTexts(stored: unknown): stored is StoredTexts {
  if (typeof stored !== "object" || stored === null) return false;
  return Object.values(stored).every(
    (values) => Array.isArray(values) && values.every((value) => typeof value === "string"),
  );
}

function fill(form: HTMLFormElement, stored: StoredTexts): void {
  for (const control of form.elements) {
    if (control instanceof HTMLInputElement && ["checkbox", "radio"].includes(control.type)) {
      const values = stored[control.name];
      if (control.checked === control.defaultChecked && (values !== undefined || control.type === "checkbox"))
        control.checked = values?.includes(control.value) ?? control.defaultChecked;
    } else if (control instanceof HTMLSelectElement) {
      control.value = stored[control.name]?.[0] ?? control.value;
    } else if (isTextField(control) && control.value === control.defaultValue) {
      control.value = stored[control.name]?.[0] ?? control.value;
    }
  }
}

function isTextField(control: Element): control is HTMLInputElement | HTMLTextAreaElement {
  return control instanceof HTMLTextAreaElement || (control instanceof HTMLInputElement && control.type !== "hidden");
}
