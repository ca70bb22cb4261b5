/** Whether to link a test to the signed-in account. */
export function AsWhom({ viewerName }: { readonly viewerName: string }) {
  return (
    <fieldset className="mb-5">
      <legend className="mb-1 font-semibold">Use your account for this test?</legend>
      <Choice value="account" isDefault>
        Test as <bdi className="font-semibold">{viewerName}</bdi>
        <span className="block text-sm text-soft">You can then sign in from any device.</span>
      </Choice>
      <Choice value="link">
        Continue without the account
        <span className="block text-sm text-soft">This browser gets access, and so does anyone who has your link.</span>
      </Choice>
    </fieldset>
  );
}

interface ChoiceProps {
  readonly value: string;
  readonly isDefault?: boolean;
  readonly children: React.ReactNode;
}

function Choice({ value, isDefault, children }: ChoiceProps) {
  return (
    <label className="flex min-h-11 cursor-pointer gap-3 py-1.5 wrap-anywhere">
      <input
        type="radio"
        name="as"
        value={value}
        defaultChecked={isDefault}
        className="mt-1 size-5 shrink-0 accent-thread"
      />
      <span className="min-w-0">{children}</span>
    </label>
  );
}
