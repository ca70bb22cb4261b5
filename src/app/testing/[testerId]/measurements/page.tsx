import type { Metadata } from "next";
import { redirect } from "next/navigation";
import type { PatternDocument } from "@/engine/pattern";
import type { ReportContext } from "@/engine/reporting";
import { drawnIn, viewsInSize } from "@/features/patterns/computed";
import { fullWidthCm } from "@/features/patterns/drawing/line-path";
import { MeasurementStep } from "@/features/testing/report/steps/measurement-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { itemKey } from "@/features/testing/report/steps/item-key";
import { measurementToTake } from "@/features/testing/report/steps/measured";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";
import { TapeDrawing } from "./tape-drawing";

export const metadata: Metadata = { title: "Measurements" };

export default async function MeasurementsPage({
  params,
  searchParams,
}: PageProps<"/testing/[testerId]/measurements">) {
  const [{ testerId }, { m, add }] = await Promise.all([params, searchParams]);
  const loaded = await loadTester(testerId);
  const report = filledReport(testerId, loaded.inHand);
  const first = measurementToTake(report);
  // The address names the open measurement; otherwise a save while somebody types would turn to the next one.
  if (m === undefined && first !== undefined) redirect(`/testing/${testerId}/measurements?m=${first.id}`);
  const key = itemKey(add);
  return (
    <TesterFrame
      loaded={loaded}
      step="measurements"
      title="Measurements"
      intro="Lay the garment flat, without pulling. Enter what the tape says: 38.5, 38,5 or 12 3/8 in."
    >
      {first === undefined ? (
        <p>This pattern has no measurements.</p>
      ) : (
        <MeasurementStep
          report={report}
          next={nextPage(loaded, "measurements")}
          added={typeof m === "string" && key !== undefined ? { measurement: m, key } : null}
          drawingOf={(measurement) => <TapePosition context={report.context} measurement={measurement} />}
        />
      )}
    </TesterFrame>
  );
}

interface TapePositionProps {
  readonly context: ReportContext;
  readonly measurement: PatternDocument["measurements"][number];
}

/** The garment, or the piece, with this measurement alone on it, if the pattern says where it is taken. */
function TapePosition({ context: { pattern, size }, measurement: { id } }: TapePositionProps) {
  const view = drawnIn(viewsInSize(pattern, size)).find(({ tapes }) =>
    tapes.some(({ measurement }) => measurement === id),
  );
  if (view === undefined) return null;
  const inSize = `in ${pattern.sizes.find((each) => each.id === size)?.label ?? size}`;
  return (
    <TapeDrawing
      view={view}
      title={`${view.piece === null ? "The garment" : view.label} ${inSize}`}
      fullWidthCm={fullWidthCm([view.box])}
      litMeasurement={id}
    />
  );
}
