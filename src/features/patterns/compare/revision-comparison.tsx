import { patternChanges } from "@/engine/editing";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { ChangeList } from "../components/change-list";
import { finishedChanges } from "./finished-changes";
import { MarkedText } from "./marked-text";
import { SizedChangeTable } from "./sized-change-table";
import { comparedSizes, sizedChanges } from "./sized-changes";
import type { SizedPart } from "./sized-numbers";
import { termChanges } from "./term-changes";

interface RevisionComparisonProps {
  readonly before: PatternDocument;
  readonly after: PatternDocument;
  readonly unit: LengthUnit;
}

const SIZED_PARTS: readonly { readonly part: SizedPart; readonly title: string; readonly corner: string }[] = [
  { part: "counts", title: "Counts", corner: "Count" },
  { part: "lengths", title: "Lengths worked to a ruler", corner: "Work until it measures" },
  { part: "allowances", title: "Edgings and seams", corner: "Edging, seam or join" },
  { part: "targets", title: "Targets and ease", corner: "Measurement" },
  { part: "bodies", title: "Bodies of the sizes", corner: "Body" },
];

/** Paths of changes that have a section of their own. */
const SHOWN_APART =
  /^(grading\.|(allowances|lengths)\.[^.]+\.cm|measurements\.[^.]+\.(terms|target\.(easeCm|cm))|sizes\.[^.]+\.body\.|instructions$)/;

/** Everything that differs between two revisions, by part of the pattern. */
export function RevisionComparison({ before, after, unit }: RevisionComparisonProps) {
  const changes = patternChanges(before, after);
  if (changes.length === 0) return <Notice title="Nothing differs">Both revisions have the same content.</Notice>;
  const sizes = comparedSizes(before, after);
  const finished = finishedChanges(before, after, unit);
  const rest = changes.filter(({ path }) => !SHOWN_APART.test(path));
  return (
    <>
      {SIZED_PARTS.map(({ part, title, corner }) => {
        const sized = sizedChanges(before, after, { part, unit });
        return sized.length === 0 ? null : (
          <Section key={part} title={title}>
            <SizedChangeTable label={title} corner={corner} sizes={sizes} changes={sized} />
          </Section>
        );
      })}
      <TermSection before={before} after={after} />
      {finished.length === 0 ? null : (
        <Section title="Finished measurements" intro="What garments measure, at each revision’s own gauge.">
          <SizedChangeTable
            label="Finished measurements"
            corner={`Measurement, ${unit}`}
            sizes={sizes}
            changes={finished}
          />
        </Section>
      )}
      {before.instructions === after.instructions ? null : (
        <Section title="Written instructions">
          <MarkedText
            label="Written instructions, line by line"
            was={before.instructions ?? ""}
            becomes={after.instructions ?? ""}
          />
        </Section>
      )}
      {rest.length === 0 ? null : (
        <Section title="Other changes">
          <ChangeList changes={rest} unit={unit} />
        </Section>
      )}
    </>
  );
}

function TermSection({ before, after }: Pick<RevisionComparisonProps, "before" | "after">) {
  const changed = termChanges(before, after);
  if (changed.length === 0) return null;
  return (
    <Section title="How measurements are calculated">
      <div className="grid gap-5">
        {changed.map(({ key, label, was, becomes }) => (
          <div key={key} className="min-w-0">
            <h3 className="mb-2">{label}</h3>
            <MarkedText label={`How ${label} is calculated`} was={was} becomes={becomes} />
          </div>
        ))}
      </div>
    </Section>
  );
}
