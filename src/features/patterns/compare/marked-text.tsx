import type { ReactNode } from "react";
import { markLines, type MarkedLine, type MarkedPart } from "./marked-lines";

interface MarkedTextProps {
  /** What the text is, for screen readers. */
  readonly label: string;
  readonly was: string;
  readonly becomes: string;
}

/** A comparison of two texts line by line: what was added and removed is marked, also in words. */
export function MarkedText({ label, was, becomes }: MarkedTextProps) {
  const lines = markLines(was, becomes);
  if (lines === null) return <p className="text-soft">Too much was rewritten to compare it line by line.</p>;
  return (
    <ol aria-label={label} className="rounded-sheet border border-line bg-sheet px-5 py-3 shadow-sheet">
      {lines.map((line, index) => (
        <li key={index} className="grid gap-x-4 py-1 sm:grid-cols-[6rem_minmax(0,1fr)]">
          <LineWords line={line} />
        </li>
      ))}
    </ol>
  );
}

function LineWords({ line }: { readonly line: MarkedLine }) {
  switch (line.mark) {
    case "skipped":
      return (
        <p className="text-sm text-soft sm:col-start-2">
          … {line.lines === 1 ? "1 line is" : `${line.lines} lines are`} the same …
        </p>
      );
    case "same":
      return <LineText>{line.text}</LineText>;
    case "added":
      return (
        <>
          <LineMark>Added</LineMark>
          <LineText>
            <Inserted>{line.text}</Inserted>
          </LineText>
        </>
      );
    case "removed":
      return (
        <>
          <LineMark>Removed</LineMark>
          <LineText>
            <Deleted>{line.text}</Deleted>
          </LineText>
        </>
      );
    case "changed":
      return (
        <>
          <LineMark>Changed</LineMark>
          <LineText>
            {line.parts.map((part, index) => (
              <ChangedPart key={index} part={part} />
            ))}
          </LineText>
        </>
      );
  }
}

function ChangedPart({ part: { mark, text } }: { readonly part: MarkedPart }) {
  if (mark === "same") return text;
  return mark === "added" ? (
    <Inserted>
      <span className="sr-only">added: </span>
      {text}
    </Inserted>
  ) : (
    <Deleted>
      <span className="sr-only">removed: </span>
      {text}
    </Deleted>
  );
}

function LineMark({ children }: { readonly children: ReactNode }) {
  return <p className="text-sm font-semibold leading-6">{children}</p>;
}

function LineText({ children }: { readonly children: ReactNode }) {
  return (
    <p dir="auto" className="min-h-6 min-w-0 whitespace-pre-wrap wrap-anywhere sm:col-start-2">
      {children}
    </p>
  );
}

function Inserted({ children }: { readonly children: ReactNode }) {
  return <ins className="bg-band font-semibold decoration-2 underline-offset-4">{children}</ins>;
}

function Deleted({ children }: { readonly children: ReactNode }) {
  return <del className="text-soft decoration-thread">{children}</del>;
}
