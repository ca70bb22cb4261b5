"use client";

interface TableCellTextProps {
  readonly text: string;
  /** Its errors or questions. */
  readonly fault?: string;
  readonly question?: string;
  /** Name of the cell for screen readers. */
  readonly name: string;
  readonly isDim?: boolean;
  readonly onEdit: (text: string) => void;
  /** True once it has been edited: it stays a field, so that typing does not lose it. */
  readonly isOpen: boolean;
}

/** A cell of a pasted table: plain text if correct, a field to fix it if not. */
export function TableCellText({ text, fault, question, name, isDim, onEdit, isOpen }: TableCellTextProps) {
  const says = fault ?? question;
  if (says === undefined && !isOpen) return <span className={isDim ? "text-soft" : undefined}>{text}</span>;
  return (
    <span className="inline-flex items-center gap-1" title={says}>
      <span aria-hidden="true" className="w-3 text-center text-sm font-semibold text-thread">
        {fault !== undefined ? "▲" : question !== undefined ? "?" : ""}
      </span>
      <input
        value={text}
        aria-label={says === undefined ? name : `${name}. ${says}`}
        aria-invalid={fault !== undefined}
        size={Math.max(4, Math.min(24, text.length))}
        spellCheck={false}
        onChange={({ currentTarget }) => onEdit(currentTarget.value)}
        className={`min-h-9 min-w-14 rounded border bg-white px-1.5 text-inherit aria-invalid:border-2 aria-invalid:border-thread ${question === undefined ? "border-line-strong" : "border-dashed border-thread"}`}
      />
    </span>
  );
}
