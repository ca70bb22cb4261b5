import type { ReactNode } from "react";
import { greeting } from "@/features/mail/greeting-computed";
import { Sheet } from "@/ui/sheet";
import type { WrittenTo } from "./recipients-data";

interface MessagePreviewProps {
  readonly to: Pick<WrittenTo, "name" | "from">;
  readonly subject: string;
  readonly text: string;
  /** What follows the text. */
  readonly children: ReactNode;
}

/** A message as one tester gets it. */
export function MessagePreview({ to, subject, text, children }: MessagePreviewProps) {
  return (
    <div className="mb-6">
      <h3 className="mb-2 text-base font-semibold">
        As <bdi>{to.name}</bdi> gets it
      </h3>
      <Sheet className="space-y-3 wrap-anywhere">
        <p className="font-semibold">{subject}</p>
        <p>{greeting(to.name)}</p>
        <p className="whitespace-pre-wrap">{text}</p>
        {children}
        <p>{to.from}</p>
      </Sheet>
    </div>
  );
}
