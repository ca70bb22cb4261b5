import { Notice } from "./notice";

export interface Said {
  /** Where in the table: "Row 5 (B Upper arm), column M"; "" for the whole. */
  readonly where: string;
  readonly says: string;
}

interface SaidListProps {
  readonly id: string;
  readonly title: string;
  readonly items: readonly Said[];
  readonly tone: "problem" | "plain";
  readonly children?: React.ReactNode;
}

const MOST_SHOWN = 12;

/** Messages about a table, one sentence per item with its position in front. */
export function MessageList({ id, title, items, tone, children }: SaidListProps) {
  return (
    <div id={id} tabIndex={-1}>
      <Notice tone={tone} title={title}>
        <ul className="mt-1 space-y-1">
          {items.slice(0, MOST_SHOWN).map(({ where, says }, index) => (
            <li key={index} className="wrap-anywhere">
              {where === "" ? null : <span className="font-semibold">{where}: </span>}
              {says}
            </li>
          ))}
          {items.length > MOST_SHOWN ? <li className="text-soft">… and {items.length - MOST_SHOWN} more.</li> : null}
        </ul>
        {children}
      </Notice>
    </div>
  );
}
