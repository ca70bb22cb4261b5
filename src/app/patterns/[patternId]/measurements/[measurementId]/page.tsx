import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { MeasurementExplained } from "@/features/patterns/measurement/measurement-explained";
import { MeasurementNeighbours } from "@/features/patterns/measurement/measurement-neighbours";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { loadPattern } from "@/features/patterns/loaders";
import { ChoiceLinks } from "@/ui/choice-links";
import { Section } from "@/ui/section";

interface Props {
  readonly params: Promise<{ readonly patternId: string; readonly measurementId: string }>;
  readonly searchParams: Promise<{ readonly size?: string | string[] }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { patternId, measurementId } = await params;
  const { document } = (await loadPattern(patternId)).revision;
  const measurement = document.measurements.find(({ id }) => id === measurementId);
  return { title: measurement?.label ?? "Measurement" };
}

export default async function MeasurementPage({ params, searchParams }: Props) {
  const { patternId, measurementId } = await params;
  const { size: wanted } = await searchParams;
  const page = await loadPattern(patternId);
  const pattern = page.revision.document;
  const measurement = pattern.measurements.find(({ id }) => id === measurementId);
  const size = wanted === undefined ? pattern.sizes[0] : pattern.sizes.find(({ id }) => id === wanted);
  if (measurement === undefined || size === undefined) notFound();
  const here = `/patterns/${patternId}/measurements/${measurementId}`;
  return (
    <PatternFrame page={page} tab="measurements">
      <Section
        title={`${measurement.letter} · ${measurement.label}`}
        intro={<p className="wrap-anywhere">{measurement.how}</p>}
      >
        <div className="mb-5">
          <ChoiceLinks
            label="Size"
            choices={pattern.sizes.map(({ id, label }) => ({
              href: `${here}?size=${id}`,
              label,
              current: id === size.id,
            }))}
          />
        </div>
        <h3 className="mb-3">How this is calculated in {size.label}</h3>
        <MeasurementExplained pattern={pattern} measurement={measurement} size={size} unit={page.viewer.unit} />
      </Section>
      <MeasurementNeighbours patternId={patternId} pattern={pattern} measurement={measurement} size={size.id} />
    </PatternFrame>
  );
}
