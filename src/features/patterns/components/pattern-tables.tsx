import { ownValue, type CmBySize, type Count, type PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength, allowanceWords } from "@/ui/format-exact-length";
import { formatLengthNumber } from "@/ui/format-length";
import { MatrixTable } from "@/ui/matrix-table";
import { bodyLabel, repeatWords } from "../pattern-copy";

interface TableProps {
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
}

function sizeColumns({ sizes }: PatternDocument) {
  return sizes.map(({ id, label }) => ({ key: id, label }));
}

/** The body that each size is made for. */
export function BodyTable({ pattern, unit }: TableProps) {
  const named = (pattern.bodyMeasurements ?? []).map(({ id }) => id);
  const ids = [...new Set([...named, ...pattern.sizes.flatMap(({ body }) => Object.keys(body))])];
  const rows = ids.map((id) => ({
    key: id,
    head: bodyLabel(pattern, id),
    cells: pattern.sizes.map(({ body }) => {
      const cm = ownValue(body, id);
      return cm === undefined ? <span className="text-soft">none</span> : formatLengthNumber(cm, unit);
    }),
  }));
  return <MatrixTable label="Sizes" corner={`Body, ${unit}`} columns={sizeColumns(pattern)} rows={rows} />;
}

/** Counts, sizes across, with the step from the size before. */
export function CountTable({ pattern }: { readonly pattern: PatternDocument }) {
  const rows = pattern.counts.map((count) => {
    const rule = repeatWords(count);
    return {
      key: count.id,
      head: (
        <>
          {count.label}
          <span className="block text-sm text-soft">
            {count.direction}
            {rule ? `, ${rule}` : ""}
          </span>
        </>
      ),
      cells: countCells(pattern, count),
    };
  });
  return (
    <>
      <MatrixTable label="Counts" corner="Count" columns={sizeColumns(pattern)} rows={rows} />
      <p className="mt-2 text-sm text-soft">Below each count: the step from the size before.</p>
    </>
  );
}

function countCells(pattern: PatternDocument, { id }: Count) {
  const values = ownValue(pattern.grading, id);
  if (values === undefined)
    return [
      <span key="none" className="text-soft">
        no numbers yet
      </span>,
    ];
  return pattern.sizes.map((size, index) => {
    const value = ownValue(values, size.id) ?? 0;
    const before = pattern.sizes[index - 1];
    const step = before === undefined ? null : value - (ownValue(values, before.id) ?? 0);
    return (
      <>
        <span className="numbers">{value}</span>
        <span className="numbers block text-sm text-soft">{step === null ? " " : signed(step)}</span>
      </>
    );
  });
}

function signed(step: number): string {
  if (step === 0) return "same";
  return step > 0 ? `+${step}` : `−${-step}`;
}

/** Lengths to work until they measure so much. */
export function LengthTable({ pattern, unit }: TableProps) {
  const rows = (pattern.lengths ?? []).map(({ id, label, cm, measured, growth = 1 }) => ({
    key: id,
    head: measured === "working" ? `${label}, measured while working${growthWords(growth)}` : label,
    cells: bySize(pattern, cm, (value) => `${formatExactLength(value, unit)} ${unit}`),
  }));
  return <MatrixTable label="Lengths" corner="Work until it measures" columns={sizeColumns(pattern)} rows={rows} />;
}

/** `, blocked × 1.05`; nothing where blocking changes nothing. */
function growthWords(growth: number): string {
  return growth === 1 ? "" : `, blocked × ${growth}`;
}

/** What edgings, seams and joins add or take, with the sign as a word. */
export function AllowanceTable({ pattern, unit }: TableProps) {
  const rows = pattern.allowances.map(({ id, label, cm }) => ({
    key: id,
    head: label,
    cells: bySize(pattern, cm, (value) => allowanceWords(value, unit)),
  }));
  return (
    <MatrixTable label="Edgings and seams" corner="Edging, seam or join" columns={sizeColumns(pattern)} rows={rows} />
  );
}

function bySize({ sizes }: PatternDocument, cm: CmBySize, words: (cm: number) => string) {
  if (typeof cm === "number") return [sizes.length > 1 ? `${words(cm)}, in every size` : words(cm)];
  return sizes.map(({ id }) => words(ownValue(cm, id) ?? 0));
}

/** Sums of counts that must match. */
export function TieList({ pattern: { ties, counts } }: { readonly pattern: PatternDocument }) {
  const label = (id: string) => counts.find((count) => count.id === id)?.label ?? id;
  const times = (number: number) => (number === 1 ? "" : `${number} × `);
  return (
    <ul className="grid gap-1.5">
      {ties.map(({ count, per = 1, equals, within = 0 }, index) => (
        <li key={index} className="wrap-anywhere">
          {times(per)}
          {label(count)} = {equals.map((part) => `${times(part.times)}${label(part.count)}`).join(" + ")}
          {within > 0 ? `, within ${within}` : ""}
        </li>
      ))}
    </ul>
  );
}
