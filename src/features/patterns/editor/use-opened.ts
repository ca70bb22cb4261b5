import { useState } from "react";

/** Which items of a list are open, by id. */
export function useOpened(first: readonly string[]) {
  const [opened, setOpened] = useState<ReadonlySet<string>>(() => new Set(first));
  return {
    isOpen: (id: string) => opened.has(id),
    open: (id: string) => setOpened((now) => new Set([...now, id])),
    toggle: (id: string) =>
      setOpened((now) => new Set(now.has(id) ? [...now].filter((each) => each !== id) : [...now, id])),
  };
}
