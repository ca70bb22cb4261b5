import Link from "next/link";
import type { LoadedPlaces } from "../loaders";
import type { PlacesFrame } from "./placing-table";

const MOST_NAMED = 10;

/** Who is not considered at all, and why: no word, a no, a maybe, a body that is not known. */
export function LeftOut({ loaded, frame }: { readonly loaded: LoadedPlaces; readonly frame: PlacesFrame }) {
  const { rows, board } = loaded;
  const { fitBy } = board.question;
  const says = countWords(loaded);
  if (says.length === 0 && board.withoutBody.length === 0 && rows.withdrawn === 0) return null;
  return (
    <div className="-mt-6 mb-12 text-sm text-soft">
      {says.length > 0 ? (
        <p>
          Not considered: {says.join(", ")}. Say yes, maybe or no on{" "}
          <Link href={`/calls/${frame.callId}/applications`} className="text-link">
            Applications
          </Link>
          .
        </p>
      ) : null}
      {board.withoutBody.slice(0, MOST_NAMED).map(({ name, missing }, at) => (
        <p key={at} className="wrap-anywhere">
          <bdi className="font-semibold">{name}</bdi> cannot be placed: no{" "}
          {missing.map((id) => (frame.measurements[fitBy.indexOf(id)] ?? id).toLowerCase()).join(" and no ")} is known.
        </p>
      ))}
      {board.withoutBody.length > MOST_NAMED ? (
        <p>So it is with {board.withoutBody.length - MOST_NAMED} more.</p>
      ) : null}
      {rows.withdrawn > 0 ? <p>{rows.withdrawn} of those who applied withdrew.</p> : null}
    </div>
  );
}

function countWords({ rows: { applicants }, considering }: LoadedPlaces): string[] {
  const settled = applicants.filter(({ hold }) => hold !== "size");
  const counts = [
    { many: settled.filter(({ word }) => word === null).length, of: "without a word of yours" },
    { many: considering === "yes" ? settled.filter(({ word }) => word === "maybe").length : 0, of: "with a maybe" },
    { many: applicants.filter(({ word }) => word === "no").length, of: "with a no" },
  ];
  return counts.filter(({ many }) => many > 0).map(({ many, of }) => `${many} ${of}`);
}
