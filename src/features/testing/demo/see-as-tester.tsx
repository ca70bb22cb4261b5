import { Sheet } from "@/ui/sheet";
import { GoOnForm } from "../invited/go-on-form";

/** Opens the demo's test as one of its invented testers sees it. @param link theirs. */
export function SeeAsTester({ link }: { readonly link: string }) {
  return (
    <Sheet className="mb-10">
      <h2 className="mb-2">See it as a tester</h2>
      <p className="mb-4 text-soft">
        Marit, also invented, makes size M and has begun to measure. Try it on a phone, where testers are.
      </p>
      <GoOnForm link={link} viewerName={null} button="See it as a tester" />
    </Sheet>
  );
}
