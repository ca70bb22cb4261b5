import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export default function NotFound() {
  return (
    <Page
      title="There is nothing at this address"
      width="narrow"
      intro="It may have been mistyped, or what stood here is not yours to see. If somebody sent you the link, ask whether it is shared with the account you are signed in with."
    >
      <ButtonLink href="/patterns">Go to your patterns</ButtonLink>
    </Page>
  );
}
