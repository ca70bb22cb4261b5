import { patternAccess } from "@/features/patterns/access";
import { loadPattern } from "@/features/patterns/loaders";
import { readErrata } from "@/features/testing/errata/errata-data";
import { errataCsv } from "@/features/testing/errata/errata-text";
import { csvDownload } from "@/server/csv";

export async function GET(_request: Request, { params }: RouteContext<"/patterns/[patternId]/errata.csv">) {
  const { viewer, patternId, revision } = await loadPattern((await params).patternId);
  const access = await patternAccess(viewer, patternId, "viewer");
  const errata = await readErrata(access, { pattern: revision.document });
  return csvDownload([revision.document.name, "errata"], errataCsv(errata));
}
