import type { Cause } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Section } from "@/ui/section";
import { causeSentence, rivalWords } from "../cause-words";

interface LikelyCausesProps {
  readonly causes: readonly Cause[];
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
}

/** What would explain the gaps, best first; nothing where nothing does. */
export function LikelyCauses({ causes, pattern, unit }: LikelyCausesProps) {
  if (causes.length === 0) return null;
  return (
    <Section title="What would explain them">
      <ol className="grid gap-3 md:grid-cols-3">
        {causes.map((cause) => {
          const tied = cause.rivals.filter((rival) => rival.tied);
          const others = cause.rivals.filter((rival) => !rival.tied);
          return (
            <li
              key={`${cause.kind} ${cause.id} ${cause.size ?? ""} ${cause.direction ?? ""}`}
              className="numbers rounded-sheet border border-line border-l-4 border-l-thread bg-sheet p-4"
            >
              <p className="font-serif text-lg leading-snug">{causeSentence(cause, pattern, unit)}</p>
              <p className="mt-2 text-sm text-soft">
                {cause.explains > 0 ? `It explains ${Math.round(cause.explains * 100)} % of the gaps. ` : ""}
                {tied.length > 0
                  ? `No report can tell it from ${tied.map((rival) => rivalWords(rival, pattern)).join(" or ")}. `
                  : ""}
                {others.length > 0
                  ? `Nearly as likely: ${others.map((rival) => rivalWords(rival, pattern)).join("; ")}.`
                  : ""}
              </p>
            </li>
          );
        })}
      </ol>
    </Section>
  );
}
