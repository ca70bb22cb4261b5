import type { AcceptedCopy } from "./accepted-copy";

/** What was found, and what was accepted. */
export function AcceptedList({ taken }: { readonly taken: readonly AcceptedCopy[] }) {
  return (
    <ol className="grid gap-3">
      {taken.map(({ found, done }) => (
        <li
          key={found}
          className="numbers rounded-sheet border border-line border-l-4 border-l-thread bg-sheet px-5 py-4 wrap-anywhere"
        >
          <p className="font-serif text-lg leading-snug">{found}</p>
          <p className="mt-1">{done}</p>
        </li>
      ))}
    </ol>
  );
}
