import { SubmitButton } from "@/ui/submit-button";
import { signOut, signOutEverywhere } from "../actions";

export function SignOutButtons() {
  return (
    <div className="flex flex-wrap gap-3">
      <form action={signOut}>
        <SubmitButton look="quiet" waiting="Signing out…">
          Sign out
        </SubmitButton>
      </form>
      <form action={signOutEverywhere}>
        <SubmitButton look="quiet" waiting="Signing out…">
          Sign out everywhere
        </SubmitButton>
      </form>
    </div>
  );
}
