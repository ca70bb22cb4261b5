import type { Fault } from "@/engine/pattern";

const SHOWN = 20;

/** Faults by path and message; many are collapsed, because one mistake often causes a hundred. */
export function FaultList({ faults }: { readonly faults: readonly Fault[] }) {
  const rest = faults.slice(SHOWN);
  return (
    <>
      <FaultItems faults={faults.slice(0, SHOWN)} />
      {rest.length > 0 ? (
        <details className="mt-2">
          <summary className="font-semibold">{rest.length} more</summary>
          <FaultItems faults={rest} />
        </details>
      ) : null}
    </>
  );
}

function FaultItems({ faults }: { readonly faults: readonly Fault[] }) {
  return (
    <ul className="mt-2 grid gap-2 text-sm">
      {faults.map(({ path, says }, index) => (
        <li key={index} className="wrap-anywhere">
          <code className="rounded bg-band px-1.5 py-0.5 font-semibold">{path === "$" ? "the whole file" : path}</code>{" "}
          {says}
        </li>
      ))}
    </ul>
  );
}
