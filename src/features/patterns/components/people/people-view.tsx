import { Section } from "@/ui/section";
import type { PeoplePage } from "../../people-loaders";
import { InvitationList } from "./invitation-list";
import { InviteForm } from "./invite-form";
import { PeopleList } from "./people-list";

/** Who has a part in a pattern; for its owner, the way to let others in too. */
export function PeopleView({ page, now }: { readonly page: PeoplePage; readonly now: Date }) {
  const { patternId, role, people, invitations } = page;
  return (
    <>
      <Section title="Who has a part in this pattern" intro={introTo(role, people.length)}>
        <PeopleList page={page} />
      </Section>
      {role === "owner" ? (
        <>
          <Section
            title="Invite a helper"
            intro="A technical editor, say, or whoever works the sample. You get a link to send them; whoever opens it first and takes it is in."
          >
            <div className="max-w-2xl">
              <InviteForm patternId={patternId} />
            </div>
          </Section>
          {invitations.length > 0 ? (
            <Section
              title="Links that nobody has taken"
              intro="The links themselves are not kept here. Withdraw one that is lost, and make another."
            >
              <InvitationList patternId={patternId} invitations={invitations} now={now} />
            </Section>
          ) : null}
        </>
      ) : null}
    </>
  );
}

function introTo(role: PeoplePage["role"], people: number): string {
  if (role !== "owner") return "Its owner lets others in, and can end that.";
  return people === 1 ? "Only you so far." : "Testers are no helpers, and not listed here.";
}
