"use client";

import { useCallback, useSyncExternalStore } from "react";

const held = new Map<string, string>();
const listeners = new Set<() => void>();

/**
 * A text that outlives a reload of this tab, "" at first. If the browser refuses to store it, it lasts while the page is open.
 *
 * @param key unique among the texts of all screens and people.
 */
export function useStoredText(key: string): readonly [string, (text: string) => void] {
  const text = useSyncExternalStore(
    subscribe,
    () => read(key),
    () => "",
  );
  const keep = useCallback((next: string) => write(key, next), [key]);
  return [text, keep];
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function read(key: string): string {
  const inMemory = held.get(key);
  if (inMemory !== undefined) return inMemory;
  const stored = fromStorage(key);
  held.set(key, stored);
  return stored;
}

function write(key: string, text: string): void {
  held.set(key, text);
  try {
    if (text === "") sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, text);
  } catch {
    // Storage is full or refused: the text still stands in memory.
  }
  for (const listener of listeners) listener();
}

function fromStorage(key: string): string {
  try {
    return sessionStorage.getItem(key) ?? "";
  } catch {
    return "";
  }
}
