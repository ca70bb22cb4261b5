import { ButtonLink } from "@/ui/button";
import { Sheet } from "@/ui/sheet";

/** After the first table: the second is the next step. */
export function PasteMade({ patternId, name }: { readonly patternId: string; readonly name: string }) {
  return (
    <Sheet className="max-w-2xl">
      <div role="status">
        <h2 className="mb-2">✓ “{name}” created</h2>
        <p className="text-soft">
          It has the measurements you pasted. Next, import what your testers reported to see which sizes come out
          different.
        </p>
      </div>
      <div className="mt-6 flex flex-wrap gap-3">
        <ButtonLink href={`/patterns/${patternId}/reports/paste`}>Import testers’ reports</ButtonLink>
        <ButtonLink href={`/patterns/${patternId}`} look="quiet">
          Open the pattern
        </ButtonLink>
      </div>
    </Sheet>
  );
}
