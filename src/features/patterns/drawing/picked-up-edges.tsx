import { gradedCounts, ownValue, type PatternDocument, type Size } from "@/engine/pattern";
import { pickUp, pickUpText, rateOfTie, rateText, type PickedUp } from "@/engine/shaping";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";

interface PickedUpEdgesProps {
  readonly pattern: PatternDocument;
  readonly sizes: readonly Size[];
}

/** Edges along which stitches are picked up, from the pattern's sums. */
export function PickedUpEdges({ pattern, sizes }: PickedUpEdgesProps) {
  const edges = pattern.ties.flatMap((tie) => rateOfTie(pattern.counts, tie) ?? []);
  if (edges.length === 0) return null;
  return (
    <Section title="Picked up along edges">
      <ul className="grid gap-5">
        {edges.map((edge, index) => (
          <li key={index}>
            <Sheet>
              <h3 className="wrap-anywhere">{labelOf(pattern, edge.stitches)}</h3>
              <p className="mb-4 text-soft wrap-anywhere">
                From {labelOf(pattern, edge.rows)}: {rateText(edge.rate)}.
              </p>
              <dl className="numbers grid gap-3">
                {sizes.map((size) => (
                  <EdgeInSize key={size.id} pattern={pattern} size={size} edge={edge} />
                ))}
              </dl>
            </Sheet>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function EdgeInSize({
  pattern,
  size,
  edge,
}: {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly edge: PickedUp;
}) {
  const counts = gradedCounts(pattern, size.id);
  const rows = ownValue(counts, edge.rows);
  const graded = ownValue(counts, edge.stitches);
  const differs = rows !== undefined && graded !== undefined && pickUp(rows, edge.rate).stitches !== graded;
  return (
    <div className="grid gap-x-4 sm:grid-cols-[5rem_1fr]">
      <dt className="font-semibold wrap-anywhere">{size.label}</dt>
      <dd>
        {rows === undefined ? "Its rows have no number yet." : pickUpText(rows, edge.rate, pattern.craft)}
        {differs ? ` The pattern has ${graded}: skip one row fewer, or one more, for each stitch between them.` : ""}
      </dd>
    </div>
  );
}

function labelOf({ counts }: PatternDocument, id: string): string {
  return counts.find((count) => count.id === id)?.label ?? id;
}
