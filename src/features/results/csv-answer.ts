import "server-only";
import { csvDownload, notCalculated, stillCalculating } from "@/server/csv";
import type { LoadedResults, Results, ShownCall } from "./loaders";

/** A page's table as a file named after pattern, test and page, or why there is none while the results are not up to date. */
export async function csvAnswer<Parts>(
  { call, revision }: ShownCall,
  page: string,
  { progress, results }: LoadedResults<Parts>,
  tableOf: (results: Results<Parts>) => string | Promise<string>,
): Promise<Response> {
  switch (progress.status) {
    case "updating":
      return stillCalculating();
    case "stopped":
    case "failed":
      return notCalculated(progress.message);
    case "current":
      return results === null
        ? stillCalculating()
        : csvDownload([revision.document.name, call.title, page], await tableOf(results));
  }
}
