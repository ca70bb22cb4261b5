"use client";

import { useCallback, useSyncExternalStore } from "react";
import { tabStore } from "./browser-store";

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
  const stored = tabStore.read(key);
  const text = typeof stored === "string" ? stored : "";
  held.set(key, text);
  return text;
}

/** Where storage is full or refused, the text still stands in memory. */
function write(key: string, text: string): void {
  held.set(key, text);
  tabStore.write(key, text === "" ? undefined : text);
  for (const listener of listeners) listener();
}
