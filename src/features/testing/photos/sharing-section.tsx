import type { Sharing } from "@/features/recruiting/listing/photo-sharing-schema";
import { dayText } from "@/ui/day";
import { Section } from "@/ui/section";
import type { AgreedSharing } from "./sharing-data";

/** What a tester may show of their photos themselves, as they agreed. */
export function SharingSection({ agreed }: { readonly agreed: AgreedSharing | null }) {
  if (agreed === null) return null;
  const { progressPhotos, finishedPhotos } = agreed;
  return (
    <Section title="What you may show" intro="As you agreed when you applied.">
      <ul className="grid max-w-3xl list-disc gap-1.5 pl-5">
        {progressPhotos === null ? null : <li>{sharingWords("Your work in progress", progressPhotos, agreed)}</li>}
        {finishedPhotos === null ? null : <li>{sharingWords("The finished garment", finishedPhotos, agreed)}</li>}
        <li>The pattern’s text, charts and numbers: never.</li>
      </ul>
    </Section>
  );
}

function sharingWords(what: string, from: Sharing, { isReleased, releaseOn }: AgreedSharing): string {
  switch (from) {
    case "never":
      return `${what}: please don’t show it to others.`;
    case "any":
      return `${what}: at any time.`;
    case "release":
      if (isReleased) return `${what}: yes, the pattern is released.`;
      return `${what}: once the pattern is released${releaseOn === null ? "" : `, planned for ${dayText(new Date(releaseOn))}`}.`;
  }
}
