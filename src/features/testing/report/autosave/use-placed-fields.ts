import { useCallback, useState } from "react";

interface PlacedFields {
  readonly place: (field: string) => () => void;
  readonly note: (field: string) => void;
  readonly isPlaced: (field: string) => boolean;
}

/**
 * The fields on a page that show their own question, and how one is added to them.
 *
 * @param isIdle no scripts have come: what stands earlier in the form was drawn earlier, and noted itself then.
 */
export function usePlacedFields({ isIdle }: { readonly isIdle: boolean }): PlacedFields {
  const [placed, setPlaced] = useState<ReadonlySet<string>>(new Set());
  const [noted] = useState(() => new Set<string>());
  const place = useCallback((field: string) => {
    setPlaced((fields) => new Set([...fields, field]));
    return () => setPlaced((fields) => new Set([...fields].filter((each) => each !== field)));
  }, []);
  const note = useCallback((field: string) => void noted.add(field), [noted]);
  return { place, note, isPlaced: (field) => (isIdle ? noted : placed).has(field) };
}
