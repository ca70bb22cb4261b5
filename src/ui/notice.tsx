import type { ReactNode } from "react";

type NoticeTone = "plain" | "problem" | "done";

const LOOKS: Readonly<Record<NoticeTone, { box: string; sign: string }>> = {
  plain: { box: "border-line-strong bg-sheet", sign: "→" },
  problem: { box: "border-thread bg-thread-tint", sign: "▲" },
  done: { box: "border-ink bg-sheet", sign: "✓" },
};

interface NoticeProps {
  readonly tone?: NoticeTone;
  readonly title?: string;
  readonly children?: ReactNode;
}

/** A message to the reader. Its sign and its words carry the meaning; the colour only helps. */
export function Notice({ tone = "plain", title, children }: NoticeProps) {
  const { box, sign } = LOOKS[tone];
  return (
    <div
      role={tone === "problem" ? "alert" : "status"}
      className={`mb-6 flex gap-3 rounded-md border-l-4 px-4 py-3 ${box}`}
    >
      <span aria-hidden="true" className="font-semibold">
        {sign}
      </span>
      <div className="min-w-0">
        {title ? <p className="font-semibold">{title}</p> : null}
        {children}
      </div>
    </div>
  );
}
