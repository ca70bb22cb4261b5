import Link from "next/link";
import type { Size } from "@/engine/pattern";
import { Notice } from "@/ui/notice";
import { stepFaults } from "./step-list";
import type { PieceBoard } from "./piece-board";

/** Which steps cannot be worked as described, in which sizes; each size links to its schematic. */
export function StepFaults({ boards, here }: { readonly boards: readonly PieceBoard[]; readonly here: string }) {
  const faulty = boards.flatMap(({ piece, steps, views }) =>
    steps.flatMap((worked, index) => {
      const sizes = views.flatMap(({ size }) => (stepFaults(worked, [size]).length > 0 ? [size] : []));
      return sizes.length === 0 ? [] : [{ name: `${piece.label}, step ${index + 1}`, sizes, of: views.length }];
    }),
  );
  if (faulty.length === 0) return null;
  return (
    <Notice title="Some parts cannot be worked as described">
      <ul className="mt-1 grid gap-1">
        {faulty.map(({ name, sizes, of }) => (
          <li key={name} className="wrap-anywhere">
            {name}: {sizes.length === of && of > 1 ? "in every size" : <SizeLinks sizes={sizes} here={here} />}
          </li>
        ))}
      </ul>
    </Notice>
  );
}

function SizeLinks({ sizes, here }: { readonly sizes: readonly Size[]; readonly here: string }) {
  return sizes.map((size, index) => (
    <span key={size.id}>
      {index === 0 ? "in " : ", "}
      <Link href={`${here}?size=${size.id}`} className="text-link">
        {size.label}
      </Link>
    </span>
  ));
}
