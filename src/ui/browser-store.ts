/** What a browser stores by key, as JSON. */
export interface BrowserStore {
  /** @returns the value under a key; undefined if there is none, or the browser refuses. */
  readonly read: (key: string) => unknown;
  /** @param value undefined removes it. @returns false if it is not stored: the browser refuses, or is full. */
  readonly write: (key: string, value: unknown) => boolean;
  readonly keys: () => readonly string[];
}

/** Outlives the tab. */
export const localStore = browserStore(() => localStorage);

/** Outlives a reload, and goes with the tab. */
export const tabStore = browserStore(() => sessionStorage);

/** Reaching for the storage may already throw, so that it is asked for each time. */
function browserStore(storage: () => Storage): BrowserStore {
  return {
    read: (key) => {
      try {
        const text = storage().getItem(key);
        return text === null ? undefined : JSON.parse(text);
      } catch {
        return undefined;
      }
    },
    write: (key, value) => {
      try {
        if (value === undefined) storage().removeItem(key);
        else storage().setItem(key, JSON.stringify(value));
        return true;
      } catch {
        return false;
      }
    },
    keys: () => {
      try {
        return Object.keys(storage());
      } catch {
        return [];
      }
    },
  };
}
