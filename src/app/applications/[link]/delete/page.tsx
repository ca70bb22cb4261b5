import type { Metadata } from "next";
import { DeleteView } from "@/features/recruiting/applications/own/delete-view";
import { loadOwnApplication } from "@/features/recruiting/applications/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Delete your application", robots: { index: false, follow: false } };

export default async function DeleteApplicationPage({ params }: PageProps<"/applications/[link]/delete">) {
  const { link } = await params;
  const { application } = await loadOwnApplication(link);
  return (
    <Page title="Delete your application?" width="narrow">
      <DeleteView link={link} application={application} />
    </Page>
  );
}
