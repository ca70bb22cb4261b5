"use client";

import { useRouter } from "next/navigation";
import { createContext, useContext, useEffect, useRef, useState, type ReactNode } from "react";
import { useStore, type StoreApi } from "zustand";
import { createEditingStore, type Editing, type EditingStart } from "./editing-store";

const EditingContext = createContext<StoreApi<Editing> | null>(null);

/** @throws {Error} outside of the editor. */
export function useEditingStore(): StoreApi<Editing> {
  const store = useContext(EditingContext);
  if (store === null) throw new Error("useEditing outside of EditingProvider");
  return store;
}

/**
 * The parts of the editing state that a component needs; it is drawn again only when one of these changes.
 *
 * @example const { pattern, change } = useEditing("pattern", "change");
 */
export function useEditing<Key extends keyof Editing>(...keys: readonly Key[]): Pick<Editing, Key> {
  const store = useEditingStore();
  useEditingValue((editing) => keys.map((key) => editing[key]));
  return store.getState();
}

/** One part of the editing state, or several by name: a component is drawn again when one of them changes. */
export function useEditingValue<Value>(select: (editing: Editing) => Value): Value {
  const last = useRef<Value>(undefined);
  return useStore(useEditingStore(), (editing) => {
    const next = select(editing);
    if (last.current !== undefined && isSame(last.current, next)) return last.current;
    last.current = next;
    return next;
  });
}

/** Zustand's own comparison makes maps of both, which is slow for 1,440 cells at every key. */
function isSame(left: unknown, right: unknown): boolean {
  if (Object.is(left, right)) return true;
  if (!isPlain(left) || !isPlain(right)) return false;
  const keys = Object.keys(right);
  return keys.length === Object.keys(left).length && keys.every((key) => Object.is(left[key], right[key]));
}

/** A list or an object that a selection made; not a map, whose entries are no keys. */
function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && (Array.isArray(value) || value.constructor === Object);
}

export function EditingProvider({ children, ...start }: EditingStart & { readonly children: ReactNode }) {
  const router = useRouter();
  const [store] = useState(() => createEditingStore(start));
  useEffect(() => store.getState().resume(), [store]);
  useEffect(
    () =>
      store.subscribe(({ status }, before) => {
        if (status.kind === "late" && before.status.kind !== "late") router.refresh();
      }),
    [router, store],
  );
  return <EditingContext value={store}>{children}</EditingContext>;
}
