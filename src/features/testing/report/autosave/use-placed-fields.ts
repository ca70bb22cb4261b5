import { useCallback, useState } from "react";

/** The fields on a page that show their own question, and how one is added to them. */
export function usePlacedFields(): readonly [placed: ReadonlySet<string>, place: (field: string) => () => void] {
  const [placed, setPlaced] = useState<ReadonlySet<string>>(new Set());
  const place = useCallback((field: string) => {
    setPlaced((fields) => new Set([...fields, field]));
    return () => setPlaced((fields) => new Set([...fields].filter((each) => each !== field)));
  }, []);
  return [placed, place];
}
