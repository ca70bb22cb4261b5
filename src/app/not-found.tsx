import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: { absolute: "Nothing here · Sizewright" } };

/** The same for what is absent and for what is somebody else's. */
export default function NotFound() {
  return (
    <Page
      title="There is nothing here"
      intro="Either there is nothing at this address, or it is not yours to see. Check the address, or ask whoever gave it to you."
      width="narrow"
    >
      <ButtonLink href="/">Home</ButtonLink>
    </Page>
  );
}
