"use client";

import { useRouter } from "next/navigation";
import { createContext, useContext, useEffect, useState, type ReactNode } from "react";
import { useStore, type StoreApi } from "zustand";
import { useShallow } from "zustand/react/shallow";
import { createEditing, type Editing, type EditingStart } from "./editing-store";

const EditingContext = createContext<StoreApi<Editing> | null>(null);

/** @throws {Error} outside of the editor. */
export function useEditingStore(): StoreApi<Editing> {
  const store = useContext(EditingContext);
  if (store === null) throw new Error("useEditing outside of EditingProvider");
  return store;
}

/**
 * What a component needs of the editing; it is drawn anew when one of these changes, and else not.
 *
 * @example const { pattern, change } = useEditing("pattern", "change");
 */
export function useEditing<Key extends keyof Editing>(...keys: readonly Key[]): Pick<Editing, Key> {
  const store = useEditingStore();
  useStore(
    store,
    useShallow((editing) => keys.map((key) => editing[key])),
  );
  return store.getState();
}

/** One thing out of the editing, or several by name: a component is drawn anew when one of them is another. */
export function useEditingValue<Value>(select: (editing: Editing) => Value): Value {
  return useStore(useEditingStore(), useShallow(select));
}

export function EditingProvider({ children, ...start }: EditingStart & { readonly children: ReactNode }) {
  const router = useRouter();
  const [store] = useState(() => createEditing(start));
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
