import { Section } from "@/ui/section";
import type { PeoplePage } from "./people-loaders";
import { InvitationList } from "./invitation-list";
import { InviteForm } from "./invite-form";
import { PeopleList } from "./people-list";

/** Who has access to a pattern; the owner can also invite others. */
export function PeopleView({ page, now }: { readonly page: PeoplePage; readonly now: Date }) {
  const { patternId, role, people, invitations } = page;
  return (
    <>
      <Section title="People with access to this pattern" intro={introTo(role, people.length)}>
        <PeopleList page={page} />
      </Section>
      {role === "owner" ? (
        <>
          <Section
            title="Invite a helper"
            intro="For example a technical editor or sample maker. You get a link to send them; the first person to accept it gets access."
          >
            <div className="max-w-2xl">
              <InviteForm patternId={patternId} />
            </div>
          </Section>
          {invitations.length > 0 ? (
            <Section
              title="Unused links"
              intro="The links themselves are not stored. If one is lost, withdraw it and create another."
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
  if (role !== "owner") return "The owner can invite and remove people.";
  return people === 1 ? "Only you have access so far." : "Testers are not listed here.";
}
