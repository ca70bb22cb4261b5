import type { Metadata } from "next";
import { OwnTests } from "@/features/testing/home/components/own-tests";
import { GarmentThumb } from "@/features/patterns/drawing/garment-thumb";
import { ownTests } from "@/features/testing/home/own-tests-data";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your tests" };

export default async function OwnTestsPage() {
  const viewer = await requireViewer();
  return (
    <Page title="Your tests" intro="The tests, invitations and applications of this account." width="narrow">
      <OwnTests
        tests={await ownTests(viewer)}
        now={new Date()}
        drawingOf={(pattern) => <GarmentThumb pattern={pattern} />}
      />
    </Page>
  );
}
