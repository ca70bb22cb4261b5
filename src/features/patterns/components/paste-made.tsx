import { ButtonLink } from "@/ui/button";
import { Sheet } from "@/ui/sheet";

/** After the first table: the second is the next step. */
export function PasteMade({ patternId, name }: { readonly patternId: string; readonly name: string }) {
  return (
    <Sheet className="max-w-2xl">
      <div role="status">
        <h2 className="mb-2">✓ “{name}” is made</h2>
        <p className="text-soft">
          Its measurements are what you pasted. Next, paste what your testers reported, and read which sizes came out
          otherwise.
        </p>
      </div>
      <div className="mt-6 flex flex-wrap gap-3">
        <ButtonLink href={`/patterns/${patternId}/reports/paste`}>Paste your testers’ reports</ButtonLink>
        <ButtonLink href={`/patterns/${patternId}`} look="quiet">
          Look at the pattern
        </ButtonLink>
      </div>
    </Sheet>
  );
}
