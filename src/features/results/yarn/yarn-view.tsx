import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { CategoryChart } from "@/ui/category-chart";
import { ChoiceLinks } from "@/ui/choice-links";
import { DotShape } from "@/ui/strip-dots";
import { EmptyState } from "@/ui/empty-state";
import { formatLength } from "@/ui/format-length";
import { formatYarnNumber, fromMetres } from "@/ui/format-yarn-length";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { ROUNDINGS } from "../schema";
import type { YarnBoard, YarnSheet } from "./yarn-board";
import {
  allowanceSentence,
  emptyYarn,
  publishSentence,
  untestedSentence,
  unworkedSentences,
  yarnSuspectWords,
} from "./yarn-copy";
import { YarnTable } from "./yarn-table";

interface YarnViewProps {
  readonly callId: string;
  readonly board: YarnBoard;
  readonly lengthUnit: LengthUnit;
}

/** How much of each yarn the pattern should tell people to buy. */
export function YarnView({ callId, board, lengthUnit }: YarnViewProps) {
  const { sheets, unit, roundTo } = board;
  if (sheets.length === 0)
    return (
      <EmptyState title="The pattern has no yarn yet">
        <p>Once the pattern has a yarn and its pieces, this page shows how much every size needs.</p>
      </EmptyState>
    );
  const address = callPageHref(callId, "yarn");
  return (
    <>
      <div className="mb-8 flex flex-wrap items-center justify-between gap-3">
        <div className="flex flex-wrap items-center gap-3">
          <span className="text-sm text-soft">Round up to the next</span>
          <ChoiceLinks
            label="Round up to the next"
            choices={ROUNDINGS.map((round) => ({
              label: `${round} ${unit}`,
              href: `${address}?round=${round}`,
              current: round === roundTo,
            }))}
          />
        </div>
        <a href={`${address}.csv?round=${roundTo}`} className="text-link text-sm">
          Download yarn (CSV)
        </a>
      </div>
      <Unworked board={board} />
      {sheets.map((sheet) => (
        <YarnSection key={sheet.yarn.id} {...{ sheet, board, lengthUnit }} />
      ))}
      {sheets.some(({ state }) => state === "told") ? <Supposed /> : null}
    </>
  );
}

/** Says in which sizes stitches are missing from the amounts, and why. */
function Unworked({ board }: Pick<YarnViewProps, "board">) {
  const says = unworkedSentences(board);
  if (says.length === 0) return null;
  return (
    <Notice tone="problem" title="Amounts count only what can be worked">
      <ul className="mt-1 grid gap-1">
        {says.map((sentence) => (
          <li key={sentence} className="wrap-anywhere">
            {sentence}
          </li>
        ))}
      </ul>
    </Notice>
  );
}

interface YarnSectionProps {
  readonly sheet: YarnSheet;
  readonly board: YarnBoard;
  readonly lengthUnit: LengthUnit;
}

function YarnSection({ sheet, board, lengthUnit }: YarnSectionProps) {
  const { yarn, state, perStitch, suspects } = sheet;
  const { unit } = board;
  const ball = `Balls of ${formatYarnNumber(yarn.metresPerBall, unit)} ${unit}, ${yarn.gramsPerBall} g.`;
  const untested = untestedSentence(sheet);
  const stitches = perStitch.map(
    ({ fabric, cm }) => `a stitch of ${fabric} takes about ${formatLength(cm, lengthUnit)}`,
  );
  return (
    <Section title={yarn.colour ? `${yarn.label}, ${yarn.colour}` : yarn.label} intro={ball}>
      {suspects.length === 0 ? null : (
        <ul className="mb-4 max-w-3xl border-l-4 border-thread pl-4">
          {suspects.map((suspect) => (
            <li key={`${suspect.tester} ${suspect.value}`} className="wrap-anywhere">
              {yarnSuspectWords(suspect, board)}
            </li>
          ))}
        </ul>
      )}
      {state === "told" ? (
        <>
          <p className="numbers mb-4 max-w-4xl font-serif text-xl leading-snug">{publishSentence(sheet, unit)}</p>
          <YarnChart sheet={sheet} board={board} />
          <YarnTable sheet={sheet} board={board} />
          <p className="numbers mt-3 max-w-3xl text-sm text-soft">
            {allowanceSentence(sheet)} {untested === null ? "" : `${untested} `}
            At the stated gauge {stitches.join(", ")}.
          </p>
        </>
      ) : (
        <p className="max-w-3xl text-soft">{emptyYarn(sheet)}</p>
      )}
    </Section>
  );
}

function YarnChart({ sheet, board }: { readonly sheet: YarnSheet; readonly board: YarnBoard }) {
  const { rows, reported, yarn } = sheet;
  const { unit } = board;
  const areNamed = reported.length > 0;
  const inUnit = (metres: number | null) => (metres === null ? null : fromMetres(metres, unit));
  return (
    <Sheet className="mb-5">
      <ChartKeys {...{ areNamed }} hasSetAside={reported.some(({ isSetAside }) => isSetAside)} />
      <CategoryChart
        title={`${yarn.label} by size`}
        description="The same numbers are in the table below."
        unit={unit}
        format={(value) => String(Math.round(value))}
        categories={rows.map(({ size, expectedMetres, publishMetres, used }, index) => ({
          key: size.id,
          label: size.label,
          line: inUnit(expectedMetres),
          level: inUnit(publishMetres),
          range:
            areNamed || used === null
              ? null
              : { low: fromMetres(used.leastMetres, unit), high: fromMetres(used.mostMetres, unit) },
          dots: reported
            .filter(({ sizeAt }) => sizeAt === index)
            .map(({ tester, name, metres, isSetAside }) => ({
              key: tester,
              label: name,
              value: fromMetres(metres, unit),
              mark: isSetAside ? ("cross" as const) : ("hollow" as const),
            })),
        }))}
      />
    </Sheet>
  );
}

function ChartKeys({ areNamed, hasSetAside }: { readonly areNamed: boolean; readonly hasSetAside: boolean }) {
  return (
    <ul className="mb-3 flex flex-wrap gap-x-6 gap-y-1 text-sm text-soft">
      <li className="flex items-center gap-2">
        <span aria-hidden="true" className="h-[3px] w-6 bg-thread" />
        to publish
      </li>
      <li className="flex items-center gap-2">
        <span aria-hidden="true" className="h-px w-6 bg-ink" />
        expected at the pattern’s gauge
      </li>
      <li className="flex items-center gap-2">
        {areNamed ? (
          <>
            <Key mark="hollow" />
            what a tester used, at their own gauge
          </>
        ) : (
          <>
            <span aria-hidden="true" className="h-4 w-2 rounded-sm bg-line-strong/40" />
            least to most that testers used, at their own gauges
          </>
        )}
      </li>
      {hasSetAside ? (
        <li className="flex items-center gap-2">
          <Key mark="cross" />
          excluded{" "}
        </li>
      ) : null}
    </ul>
  );
}

function Key({ mark }: { readonly mark: "hollow" | "cross" }) {
  return (
    <svg width="12" height="12" viewBox="-6 -6 12 12" aria-hidden="true">
      <DotShape mark={mark} />
    </svg>
  );
}

function Supposed() {
  return (
    <Section title="What this assumes">
      <ul className="max-w-3xl list-disc space-y-1 pl-5 text-soft">
        <li>
          Other makers’ gauges differ from the pattern’s as your testers’ swatches do: someone who works more loosely
          needs more yarn, someone tighter less. What is expected is at the pattern’s gauge.
        </li>
        <li>The yarn in a stitch grows with the stitch, √(width × height), whatever the garment’s size.</li>
        <li>Testers’ grams are converted to metres with the label of their own yarn.</li>
        <li>
          The amounts cover what testers weighed. Ask whether they included swatch, tails and seams; if not, publish
          more.
        </li>
        <li>Until many testers have swatched and weighed their yarn, makers are assumed to differ as much as usual.</li>
      </ul>
    </Section>
  );
}
