import type { NumberChange } from "@/features/calls/correction-schema";
import { FieldErrors, TextInput } from "@/ui/field";
import type { CountNumbers } from "./count-numbers";
import { sentTexts, type SentField } from "./sent-field";

interface NumberRowsProps {
  readonly id: string;
  readonly counts: readonly CountNumbers[];
  readonly changes: readonly NumberChange[];
  /** What a refused form sent. */
  readonly sent: Readonly<Record<"count" | "size" | "was" | "becomes", SentField>>;
  readonly errors?: readonly string[];
}

const SIDES = [
  { name: "was", label: "The text says" },
  { name: "becomes", label: "It should be" },
] as const;

/** Counts size by size: what the text says, and what is right. */
export function NumberRows({ id, counts, changes, sent, errors }: NumberRowsProps) {
  const filled = filledRows(sent);
  return (
    <>
      {counts.map((count) => (
        <fieldset key={count.id} className="mb-5">
          <legend className="mb-1 font-semibold">
            <bdi className="wrap-anywhere">{count.label}</bdi>{" "}
            <span className="font-normal text-soft">in {count.direction}</span>
          </legend>
          <div className="grid grid-cols-[minmax(0,12rem)_6.5rem_6.5rem] items-center gap-x-3 gap-y-1.5">
            {["Size", ...SIDES.map(({ label }) => label)].map((head) => (
              <span key={head} className="text-sm text-soft">
                {head}
              </span>
            ))}
            {count.sizes.map((size) => {
              const change = changes.find((one) => one.count === count.id && one.size === size.id);
              const row = filled.get(`${count.id} ${size.id}`) ?? {
                was: String(change?.was ?? size.was ?? ""),
                becomes: String(change?.becomes ?? ""),
              };
              return <NumberRow key={size.id} {...{ count, size, row }} describedBy={`${id}-error`} />;
            })}
          </div>
        </fieldset>
      ))}
      <div className={counts.length === 0 ? "" : "-mt-3 mb-5"}>
        <FieldErrors id={id} errors={errors} />
      </div>
    </>
  );
}

interface NumberRowProps {
  readonly count: CountNumbers;
  readonly size: CountNumbers["sizes"][number];
  readonly row: Row;
  readonly describedBy: string;
}

function NumberRow({ count, size, row, describedBy }: NumberRowProps) {
  const about = `${count.label}, size ${size.label}`;
  return (
    <div className="contents">
      <input type="hidden" name="count" value={count.id} />
      <input type="hidden" name="size" value={size.id} />
      <bdi className="min-w-0 wrap-anywhere">{size.label}</bdi>
      {SIDES.map(({ name, label }) => (
        <TextInput
          key={name}
          name={name}
          aria-label={`${label}: ${about}`}
          defaultValue={row[name]}
          inputMode="numeric"
          maxLength={9}
          aria-describedby={describedBy}
          className="numbers w-full"
        />
      ))}
    </div>
  );
}

interface Row {
  readonly was: string;
  readonly becomes: string;
}

/** What a refused form sent, by count and size. */
function filledRows({ count, size, was, becomes }: NumberRowsProps["sent"]): ReadonlyMap<string, Row> {
  const [sizes, before, after] = [sentTexts(size), sentTexts(was), sentTexts(becomes)];
  return new Map(
    sentTexts(count)
      .map((id, row) => [`${id} ${sizes[row] ?? ""}`, { was: before[row] ?? "", becomes: after[row] ?? "" }] as const)
      .filter(([key]) => key.trim() !== ""),
  );
}
